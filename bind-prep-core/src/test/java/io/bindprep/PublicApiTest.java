package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.job.JobReader;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.text.ProofText;
import io.bindprep.report.text.RepairText;
import io.bindprep.report.text.SplitText;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.words.Sentences;
import io.bindprep.sheet.SheetHtml;
import io.bindprep.sheet.SheetPdf;
import java.io.IOException;
import java.io.Serializable;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * The gate before callers: API.txt lists the facade and every type that is met through it. A line that goes or changes
 * breaks someone's program, one that comes does not; either stands in the diff.
 */
class PublicApiTest {
    /** Types where callers begin besides the facade: jobs are read, answers are written. */
    private static final List<Class<?>> WAYS_IN = List.of(
            JobReader.class,
            JsonReport.class,
            Sentences.class,
            TextReport.class,
            RepairText.class,
            SplitText.class,
            ProofText.class,
            SheetPdf.class,
            SheetHtml.class);

    /** Public for other packages and the front ends alone: shown where a promised type hands them on, not promised. */
    private static final Set<String> NOT_PROMISED = Set.of(
            // readers of tables and keys
            "table.BadRow",
            "table.OwnTables",
            "table.Table",
            "table.TableKind",
            "setting.KeyDescription",
            "setting.ValueShape",
            "job.JobOrigin",
            // names that a job may use, and the details of a job that a caller writes as settings
            "catalogue.Catalogue",
            "catalogue.Elements",
            "catalogue.LiftLimit",
            "catalogue.MeasuredErrors",
            "catalogue.Pattern",
            "catalogue.Patterns",
            "catalogue.Punches",
            "paper.SheetSize",
            "paper.SheetSizes",
            "paper.StockCatalog",
            "job.Hanger",
            "job.Order",
            "job.Overs",
            "job.PressSheet",
            "job.PrintLimits",
            "job.SpecialLeaves",
            "job.Supply",
            // pictures, sheet painters and their parts, numbers of a report
            "request.ReportContext",
            "picture.CloseUp",
            "picture.CloseUpWindow",
            "picture.PagePicture",
            "picture.PicturePair",
            "picture.Picture",
            "sheet.EdgeDrawing",
            "sheet.JobSheet",
            "sheet.OperatorSetting",
            "report.words.JobNumbers",
            // units that people read
            "wording.Measures",
            "wording.Units",
            // between stages
            "binding.Closing",
            "binding.DepthGround",
            "binding.ElementChoice",
            "binding.Gap",
            "binding.Holes",
            "binding.Margins",
            "binding.PackMeasure",
            "binding.PunchRow",
            "binding.Reason",
            "binding.Skew",
            "files.PdfSource",
            "marks.PageBasics",
            "page.Move",
            "repair.LoneMove",
            "repair.LoneMove$Zone",
            // parts of a comparison with an earlier check, which its writers show
            "check.Earlier",
            "check.Finding$Change",
            "check.Finding$Place",
            "check.Finding$Since",
            "check.Recheck",
            // parts of a day at the punch, which its writers show
            "day.Amount",
            "day.Changes",
            "day.Quote",
            "day.Setting",
            "day.Supplies",
            "job.Acceptance",
            "paper.StackReason",
            "run.Caution",
            "run.ElementNeed",
            "run.MaterialReason",
            "run.Press",
            "run.StepValues",
            "run.StockNeed",
            "volume.SplitReason");

    /** A caller who checks, repairs and reports needs these alone. */
    private static final List<String> NEEDED = List.of(
            "BindPrep",
            "ReportFormat",
            "binding.Depth",
            "binding.HoleRow",
            "binding.Plan",
            "block.Block",
            "block.Leaf",
            "catalogue.Element",
            "catalogue.Method",
            "check.Finding",
            "check.Outcome",
            "check.PageReport",
            "check.Report",
            "check.Severity",
            "job.BindingEdge",
            "job.Job",
            "job.JobFiles",
            "job.JobReader",
            "job.JobSettings",
            "marks.Mark",
            "marks.PageVerdict",
            "marks.Verdict",
            "paper.Stack",
            "paper.Stock",
            "problem.BindPrepException",
            "problem.SettingException",
            "problem.UnreadableInputException",
            "proof.ProofReport",
            "repair.ShiftReport",
            "repair.ShiftSettings",
            "repair.SplitReport",
            "request.CheckRequest",
            "request.ProofRequest",
            "request.ShiftRequest",
            "run.Run",
            "sheet.SheetHtml",
            "sheet.SheetPdf",
            "unit.Length",
            "volume.Split");

    private static final int MOST_TYPES = 100;
    private static final int MOST_NEEDED = 40;

    private static final Path FACADE =
            Path.of(System.getProperty("bindprep.root"), "bind-prep-core/src/main/java/io/bindprep");

    @Test
    void apiTxtIsWhatCallersCompileAgainst() throws Exception {
        List<Class<?>> begin = new ArrayList<>(WAYS_IN);
        for (Class<?> type : facade()) {
            if (Modifier.isPublic(type.getModifiers())) {
                begin.add(type);
            }
        }
        ApiListing listing = ApiListing.of(begin, PublicApiTest::promised);
        assertThat(listing.types()).hasSizeLessThanOrEqualTo(MOST_TYPES);
        assertThat(NEEDED).hasSizeLessThanOrEqualTo(MOST_NEEDED);
        assertThat(listing.types())
                .containsAll(NEEDED.stream().map(n -> "io.bindprep." + n).toList());
        String head = "# " + listing.types().size() + " types are promised. To check, repair and report a caller needs "
                + NEEDED.size() + " of them:\n# " + String.join(", ", NEEDED)
                + ".\n# Other types of ours that stand in a signature are handed on, not promised.\n\n";
        Generated.compare("bind-prep-core/API.txt", head + listing.text());
    }

    private static boolean promised(Class<?> type) {
        String name = type.getName().replaceFirst("^io\\.bindprep\\.", "");
        return !NOT_PROMISED.contains(name) && !NOT_PROMISED.contains(name.replaceFirst("\\$.*", ""));
    }

    private static List<Class<?>> facade() throws IOException, ClassNotFoundException {
        try (Stream<Path> files = Files.list(FACADE)) {
            List<Class<?>> types = new ArrayList<>();
            for (String name : files.map(f -> f.getFileName().toString()).toList()) {
                if (name.endsWith(".java") && !name.equals("package-info.java")) {
                    types.add(Class.forName("io.bindprep." + name.substring(0, name.length() - 5)));
                }
            }
            assertThat(types).contains(BindPrep.class);
            return types;
        }
    }

    /** The Java Language Specification, chapter 13, says what breaks a caller; each of it must show. */
    @Test
    void aListingShowsWhatBreaksCallers() {
        assertThat(ApiListing.of(List.of(Sample.class), type -> true).text()).isEqualTo("""
                enum io.bindprep.PublicApiTest$Kind
                  SECOND
                  FIRST
                  boolean last()

                static abstract class io.bindprep.PublicApiTest$Open<T extends Comparable<T>> : Serializable
                  static final int MOST
                  new(io.bindprep.PublicApiTest$Kind... kinds)
                  <K extends Number> Map<K, ?> each(Function<?, @Nullable String> f, String[] names)
                  abstract @Nullable T first(List<? super T> in) throws IOException

                record io.bindprep.PublicApiTest$Sample(List<? extends Number> sizes, @Nullable String name)
                  new(io.bindprep.PublicApiTest$Open<String> open)
                """);
    }

    public record Sample(
            List<? extends Number> sizes, @Nullable String name) {
        public Sample(Open<String> open) {
            this(List.of(), open.toString());
        }

        Sample(int inside) {
            this(List.of(inside), null);
        }
    }

    public enum Kind {
        SECOND,
        FIRST;

        public boolean last() {
            return this == FIRST;
        }
    }

    @SuppressWarnings("serial")
    public abstract static class Open<T extends Comparable<T>> implements Serializable {
        public static final int MOST = 1;
        int inside;

        protected Open(Kind... kinds) {
            inside = kinds.length;
        }

        protected abstract @Nullable T first(List<? super T> in) throws IOException;

        public <K extends Number> Map<K, ?> each(Function<?, @Nullable String> f, String[] names) {
            return Map.of();
        }

        void hidden() {}
    }
}
