package io.bindprep.job;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchFile;
import io.bindprep.paper.SheetSize;
import io.bindprep.paper.Stock;
import io.bindprep.problem.SettingException;
import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.RenamedKeys;
import io.bindprep.setting.Scalars;
import io.bindprep.table.NamedText;
import io.bindprep.table.OwnTables;
import io.bindprep.unit.Length;
import io.bindprep.wording.Capital;
import io.bindprep.wording.Spelling;
import io.bindprep.wording.Units;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Makes a job of raw settings and fills in the built-in values, which stand here and nowhere else. */
public final class JobReader {
    // the everyday copier stock whose caliper and tolerance are published (JCP O-63); those of 80 g/m2 are not
    private static final String STOCK = "bond-20";

    /** Ends the source of a stock that nobody named. */
    public static final String ASSUMED_STOCK = "built in, as the job names no stock";

    private static final int LONGEST_NOTE = 80;
    private static final int MOST_PPI = 2_400;
    private static final Length MOST_BLEED = Length.ofMm(50);
    private static final int MOST_COPIES = 1_000_000;
    // wider than any margin, looser than any punch or element in use: what lies above is a slip of the unit
    private static final Length MOST_MARGIN = Length.ofMm(100);
    private static final Length MOST_PUNCHING_TOLERANCE = Length.ofMm(10);
    private static final Length MOST_CLEARANCE = Length.ofMm(25);
    private static final Length MOST_WEB = Length.ofMm(50);

    private final JobSettings settings;
    private final Catalogue catalogue;
    private final @Nullable Punch ownPunch;
    private final StockReader stocks;

    private JobReader(JobSettings settings, Catalogue catalogue, @Nullable Punch ownPunch) {
        this.settings = settings;
        this.catalogue = catalogue;
        this.ownPunch = ownPunch;
        this.stocks = new StockReader(catalogue.stocks());
    }

    /**
     * The job that these settings ask for, where they name no file.
     *
     * @throws SettingException as {@link #toJob(JobSettings, JobFiles)}
     */
    public static Job toJob(JobSettings settings) throws SettingException {
        return toJob(settings, JobFiles.NONE);
    }

    /**
     * The job that these settings ask for.
     *
     * @param files the files that they name, as {@link JobFiles#read} makes them
     * @throws SettingException where a key, a value or a row of a table is wrong; the message names its place in the file
     */
    public static Job toJob(JobSettings settings, JobFiles files) throws SettingException {
        try {
            checkKeys(settings);
            files.checkWhole(settings);
            Catalogue catalogue =
                    files.tables().isEmpty() ? Catalogue.builtIn() : Catalogue.of(OwnTables.read(files.tables()));
            NamedText punchFile = files.punch();
            if (punchFile == null) {
                return new JobReader(settings, catalogue, null).job();
            }
            Punch punch = PunchFile.read(punchFile, catalogue);
            return new JobReader(settings, catalogue.with(punch), punch).job();
        } catch (SettingException e) {
            throw placed(e, settings);
        }
    }

    // faults found here and elsewhere, with their place: "tow" is not known (job.yaml, line 3, column 8)
    private static SettingException placed(SettingException e, JobSettings settings) {
        String place = settings.place(e.key()).map(p -> " (" + p + ")").orElse("");
        return new SettingException(
                e.key(), e.value(), e.getMessage() + place, Capital.sentence(e.remedy()), e.known());
    }

    /** The keys that a job knows, in the order of the job file. */
    public static List<String> keys() {
        return JobKeys.all();
    }

    /** Descriptions of each key, in the order of the job file. */
    public static List<KeyDescription> descriptions() {
        return JobKeyDescriptions.ALL;
    }

    /**
     * Values of each key and their origin, whether it will do or not.
     *
     * @param settings with the places of what a job file says, as {@link JobSettings#over} keeps them
     */
    public static List<JobOrigin> origins(JobSettings settings) {
        return JobOrigin.of(settings);
    }

    private static void checkKeys(JobSettings settings) throws SettingException {
        List<String> known = JobKeys.all();
        for (String key : settings.keys()) {
            if (!known.contains(key)) {
                String renamed = RenamedKeys.sentence("", key).orElse(null);
                throw renamed == null
                        ? new SettingException(key, key, "there is no such setting", Spelling.remedy(key, known), known)
                        : new SettingException(key, key, renamed, "Write the new name.", List.of());
            }
        }
    }

    private Job job() throws SettingException {
        Object covers = given(JobKeys.COVERS);
        @Nullable Cover[] both = CoverReader.covers(stocks, JobKeys.COVERS, covers == null ? "none" : covers);
        Object inserts = given(JobKeys.INSERTS);
        List<Insert> insertList = inserts == null ? List.of() : InsertReader.inserts(stocks, JobKeys.INSERTS, inserts);
        SpecialLeaves special = special();
        InsertReader.checkApart(insertList, special, both[0], both[1]);
        Object copies = given(JobKeys.COPIES);
        return new Job(
                copies == null ? 1 : Scalars.whole(JobKeys.COPIES, copies, 1, MOST_COPIES),
                choice(JobKeys.SIDES, Sides.TWO),
                choice(JobKeys.BINDING_EDGE, BindingEdge.LEFT),
                trim(),
                stock(),
                both[0],
                both[1],
                insertList,
                special,
                choice(JobKeys.BINDING, Method.WIRE),
                text(JobKeys.PITCH),
                ownPunch == null ? text(JobKeys.PUNCH) : ownPunch.id(),
                text(JobKeys.DEPTH),
                bindingMargin(),
                punchingTolerance(),
                clearance(),
                minimumWeb(),
                hanger(),
                supply(),
                choice(JobKeys.FAIL_ON, FailOn.ERROR),
                accepted(),
                printLimits(),
                order(),
                units(),
                catalogue);
    }

    private List<Acceptance> accepted() throws SettingException {
        Object value = given(JobKeys.ACCEPT);
        return value == null ? List.of() : AcceptanceReader.acceptances(JobKeys.ACCEPT, value);
    }

    private PrintLimits printLimits() throws SettingException {
        Object ppi = given(JobKeys.IMAGE_PPI);
        Object bleed = given(JobKeys.BLEED);
        return new PrintLimits(
                ppi == null ? PrintLimits.USUAL.imagePpi() : Scalars.whole(JobKeys.IMAGE_PPI, ppi, 1, MOST_PPI),
                bleed == null
                        ? PrintLimits.USUAL.bleed()
                        : "none".equals(bleed)
                                ? Length.ZERO
                                : Scalars.length(JobKeys.BLEED, bleed, MOST_BLEED, "3 mm", "1/8 in", "none"));
    }

    private Order order() throws SettingException {
        return new Order(note(JobKeys.JOB_NUMBER), note(JobKeys.CUSTOMER), note(JobKeys.DUE));
    }

    private @Nullable String note(String key) throws SettingException {
        Object value = given(key);
        return value == null ? null : Scalars.line(key, value, LONGEST_NOTE);
    }

    private @Nullable Units units() throws SettingException {
        Object value = given(JobKeys.UNITS);
        return value == null ? null : Scalars.choice(JobKeys.UNITS, SaidWords.plain(JobKeys.UNITS, value), Units.class);
    }

    private @Nullable Object given(String key) {
        return settings.value(key).orElse(null);
    }

    private <E extends Enum<E>> E choice(String key, E builtIn) throws SettingException {
        Object value = given(key);
        return value == null ? builtIn : Scalars.choice(key, SaidWords.plain(key, value), builtIn.getDeclaringClass());
    }

    private @Nullable String text(String key) throws SettingException {
        Object value = given(key);
        return value == null ? null : Scalars.text(key, value);
    }

    private @Nullable Trim trim() throws SettingException {
        String text = text(JobKeys.TRIM);
        if (text == null) {
            return null;
        }
        SheetSize size = catalogue.sizes().parse(JobKeys.TRIM, text);
        return new Trim(size.name(), size.width(), size.height());
    }

    private Stock stock() throws SettingException {
        Object value = given(JobKeys.STOCK);
        if (value != null) {
            return stocks.stock(JobKeys.STOCK, value);
        }
        Stock s = stocks.stock(JobKeys.STOCK, STOCK);
        String source = s.source() + "; " + ASSUMED_STOCK;
        return new Stock(s.name(), s.kind(), s.grammage(), s.caliperUm(), s.toleranceUm(), source, false);
    }

    private @Nullable Length bindingMargin() throws SettingException {
        Object value = given(JobKeys.BINDING_MARGIN);
        return value == null ? null : Scalars.length(JobKeys.BINDING_MARGIN, value, MOST_MARGIN, "10 mm", "3/8 in");
    }

    private @Nullable Length punchingTolerance() throws SettingException {
        Object value = given(JobKeys.PUNCHING_TOLERANCE);
        return value == null
                ? null
                : Scalars.length(JobKeys.PUNCHING_TOLERANCE, value, MOST_PUNCHING_TOLERANCE, "1 mm", "1/32 in");
    }

    private SpecialLeaves special() throws SettingException {
        Object tabs = given(JobKeys.TABS);
        Object foldOuts = given(JobKeys.FOLD_OUTS);
        Object rotated = given(JobKeys.ROTATED);
        Object sizes = given(JobKeys.OTHER_SIZES);
        SpecialReader reader = new SpecialReader(stocks, catalogue.sizes());
        return new SpecialLeaves(
                tabs == null ? List.of() : reader.tabs(JobKeys.TABS, tabs),
                foldOuts == null ? List.of() : reader.foldOuts(JobKeys.FOLD_OUTS, foldOuts),
                rotated == null ? List.of() : reader.rotated(JobKeys.ROTATED, rotated),
                sizes == null ? List.of() : reader.sizes(JobKeys.OTHER_SIZES, sizes));
    }

    private Supply supply() throws SettingException {
        Object overs = given(JobKeys.OVERS);
        Object sheet = given(JobKeys.PRESS_SHEET);
        return new Supply(
                overs == null ? Supply.BUILT_IN.overs() : SupplyReader.overs(JobKeys.OVERS, overs),
                sheet == null ? null : PressSheetReader.read(catalogue.sizes(), JobKeys.PRESS_SHEET, sheet));
    }

    private @Nullable Length minimumWeb() throws SettingException {
        Object value = given(JobKeys.MINIMUM_WEB);
        return value == null ? null : Scalars.length(JobKeys.MINIMUM_WEB, value, MOST_WEB, "3 mm", "1/8 in");
    }

    private @Nullable Hanger hanger() throws SettingException {
        Object value = given(JobKeys.HANGER);
        return value == null ? null : HangerReader.hanger(JobKeys.HANGER, value);
    }

    private @Nullable Length clearance() throws SettingException {
        Object value = given(JobKeys.CLEARANCE);
        if (value == null) {
            return null;
        }
        Optional<Clearances.Clearance> rule = Clearances.named(Scalars.text(JobKeys.CLEARANCE, value));
        return rule.isPresent()
                ? rule.get().allowance()
                : Scalars.length(JobKeys.CLEARANCE, value, MOST_CLEARANCE, "usual", "none", "close", "ample", "3 mm");
    }
}
