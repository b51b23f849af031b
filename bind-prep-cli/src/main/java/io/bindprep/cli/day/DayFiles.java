package io.bindprep.cli.day;

import io.bindprep.day.DayPlanner;
import io.bindprep.files.TextFile;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.request.Pile;
import io.bindprep.setting.Scalars;
import io.bindprep.setting.SettingFile;
import io.bindprep.unit.Length;
import io.bindprep.wording.Spelling;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads day files, job files and PDFs into entries; files that a day or job file names count from its folder. */
public final class DayFiles {
    private static final String JOBS = "jobs";
    private static final String PDF = "pdf";
    private static final String JOB = "job";
    private static final String NAME = "name";
    private static final String LEAVES = "leaves";
    private static final String PAGES = "pages";
    private static final String STACK = "stack";
    private static final String PASSWORD = "password-file";
    private static final List<String> OWN = List.of(NAME, PDF, PASSWORD, JOB, LEAVES, PAGES, STACK);
    private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");
    private static final int MOST = 1_000_000;
    private static final Length THICKEST = Length.ofMm(2000);

    private final List<Path> read = new ArrayList<>();
    private final @Nullable String password;

    /**
     * No file read yet.
     *
     * @param password of encrypted PDFs whose job names no other; null for none
     */
    public DayFiles(@Nullable String password) {
        this.password = password;
    }

    /** Every file that was read, so that none is written over. */
    public List<Path> all() {
        return List.copyOf(read);
    }

    /** The file that was read last. */
    public String last() {
        return read.isEmpty() ? "" : read.get(read.size() - 1).toString();
    }

    /**
     * The jobs that one file of the command line stands for.
     *
     * @throws IOException where it, or a job file that it names, cannot be read
     */
    public List<DayEntry> entries(Path file) throws SettingException, IOException {
        String name = String.valueOf(file.getFileName());
        if (ENDINGS.stream().noneMatch(name.toLowerCase(Locale.ROOT)::endsWith)) {
            return List.of(document(file, name));
        }
        Map<String, Object> values =
                SettingFile.read("day", text(file), file.toString()).values();
        if (!values.containsKey(JOBS)) {
            return List.of(entry(file, values, stem(name)));
        }
        for (String key : values.keySet()) {
            checkKnown(key, List.of(JOBS));
        }
        if (!(values.get(JOBS) instanceof List<?> list) || list.isEmpty()) {
            throw Scalars.wrong(
                    JOBS, String.valueOf(values.get(JOBS)), "is no list of jobs", "Write one \"- \" for each job.");
        }
        List<DayEntry> entries = new ArrayList<>();
        for (Object item : list) {
            String place = JOBS + "[" + (entries.size() + 1) + "]";
            if (!(item instanceof Map<?, ?> map)) {
                throw Scalars.wrong(
                        place, String.valueOf(item), "is no job", "Write its keys: " + String.join(", ", OWN) + ".");
            }
            Map<String, Object> job = new LinkedHashMap<>();
            map.forEach((k, v) -> job.put(String.valueOf(k), v));
            entries.add(at(place, file, job, entries.size() + 1));
        }
        return entries;
    }

    /** Fails where there are more jobs than a day may have, or two of one name. */
    public static void checkCount(List<DayEntry> entries) throws SettingException {
        if (entries.size() > DayPlanner.MOST_JOBS) {
            throw Scalars.wrong(
                    JOBS,
                    "" + entries.size(),
                    "is more than the " + DayPlanner.MOST_JOBS + " jobs that a day may have",
                    "Give them as several days.");
        }
        List<String> names = new ArrayList<>();
        for (DayEntry entry : entries) {
            if (names.contains(entry.name())) {
                throw Scalars.wrong(NAME, entry.name(), "is the name of two jobs", "Give each job a name of its own.");
            }
            names.add(entry.name());
        }
    }

    private DayEntry at(String place, Path file, Map<String, Object> job, int number)
            throws SettingException, IOException {
        try {
            return entry(file, job, "Job " + number);
        } catch (SettingException e) {
            throw new SettingException(
                    e.key(), e.value(), place + "." + e.key() + ": " + e.getMessage(), e.remedy(), e.known());
        }
    }

    private DayEntry document(Path pdf, String name) throws SettingException, IOException {
        String stem = stem(name);
        for (String ending : ENDINGS) {
            Path beside = pdf.resolveSibling(stem + ending);
            if (Files.isRegularFile(beside)) {
                Map<String, Object> values = new LinkedHashMap<>(
                        SettingFile.read(JOB, text(beside), beside.toString()).values());
                values.putIfAbsent(PDF, name);
                return entry(beside, values, stem);
            }
        }
        read.add(pdf);
        return new DayEntry(stem, JobReader.toJob(JobSettings.empty()), pdf, new Pile(null, null, null), password);
    }

    private DayEntry entry(Path file, Map<String, Object> values, String name) throws SettingException, IOException {
        List<String> known = new ArrayList<>(OWN);
        known.addAll(JobReader.keys());
        Map<String, Object> settings = new LinkedHashMap<>();
        for (Map.Entry<String, Object> e : values.entrySet()) {
            checkKnown(e.getKey(), known);
            if (!OWN.contains(e.getKey())) {
                settings.put(e.getKey(), e.getValue());
            }
        }
        String pdf = text(values, PDF);
        String stack = text(values, STACK);
        Pile pile = new Pile(
                whole(values, LEAVES),
                whole(values, PAGES),
                stack == null ? null : Scalars.length(STACK, stack, THICKEST, "12 mm", "1/2 in"));
        boolean piled = pile.leaves() != null || pile.pages() != null || stack != null;
        if ((pdf == null) != piled) {
            throw new SettingException(
                    PDF,
                    "",
                    pdf == null ? "neither a PDF nor leaves are given" : "a PDF and leaves are given together",
                    "Give pdf; or leaves, pages or stack to plan without one.",
                    OWN);
        }
        Path document = pdf == null ? null : file.resolveSibling(pdf);
        if (document != null) {
            read.add(document);
        }
        String own = text(values, NAME);
        String called = own != null
                ? own
                : pdf != null ? stem(String.valueOf(Path.of(pdf).getFileName())) : name;
        return new DayEntry(
                called, job(file, JobSettings.of(settings), text(values, JOB)), document, pile, password(file, values));
    }

    private Job job(Path file, JobSettings own, @Nullable String jobFile) throws SettingException, IOException {
        Path below = jobFile == null ? null : file.resolveSibling(jobFile);
        JobSettings settings = below == null ? own : own.over(JobSettings.read(text(below), below.toString()));
        JobFiles files = JobFiles.read(settings, (named, besideJobFile) -> {
            Path from = besideJobFile && below != null ? below : file;
            return text(from.resolveSibling(named));
        });
        return JobReader.toJob(settings, files);
    }

    private @Nullable String password(Path file, Map<String, Object> values) throws SettingException, IOException {
        String named = text(values, PASSWORD);
        if (named == null) {
            return password;
        }
        if (!values.containsKey(PDF)) {
            throw new SettingException(
                    PASSWORD, named, "no PDF is given that it could open", "Leave it out, or give pdf.", OWN);
        }
        String first = text(file.resolveSibling(named)).lines().findFirst().orElse("");
        if (first.isEmpty()) {
            throw new SettingException(
                    PASSWORD,
                    named,
                    "no password in the first line of " + named,
                    "Write the password into its first line.",
                    List.of());
        }
        return first;
    }

    private String text(Path file) throws IOException {
        read.add(file);
        return TextFile.read(file);
    }

    private static @Nullable String text(Map<String, Object> values, String key) throws SettingException {
        Object value = values.get(key);
        return value == null ? null : Scalars.text(key, value);
    }

    private static @Nullable Integer whole(Map<String, Object> values, String key) throws SettingException {
        Object value = values.get(key);
        return value == null ? null : Scalars.whole(key, value, 1, MOST);
    }

    private static void checkKnown(String key, List<String> known) throws SettingException {
        if (!known.contains(key)) {
            throw new SettingException(key, key, "there is no such setting", Spelling.remedy(key, known), known);
        }
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 1 ? name : name.substring(0, dot);
    }
}
