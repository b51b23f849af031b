package io.bindprep.sheet;

import io.bindprep.binding.Plan;
import io.bindprep.check.Finding;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Order;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.words.FindingText;
import io.bindprep.report.words.JobNumbers;
import io.bindprep.report.words.Sentences;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.report.words.WhatIfTable;
import io.bindprep.run.BookPart;
import io.bindprep.run.Caution;
import io.bindprep.run.Lift;
import io.bindprep.run.Step;
import io.bindprep.unit.Length;
import io.bindprep.volume.Volume;
import io.bindprep.wording.Capital;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Units;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.IntSummaryStatistics;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Content of a job sheet, before it is laid out.
 *
 * @param title the document's title, else the name of its file
 * @param file the name of its file, without folders
 * @param good whether it may be printed and bound
 * @param verdict the answer in one sentence
 * @param faults the errors and warnings, worst first, one line each
 * @param numbers the job in numbers
 * @param parts the copy, or each volume of it
 * @param whatIf rows of a table, its heading first; empty where the punch has one setting only
 * @param materials rows of a table, its heading first
 * @param before the steps before the punch is set: printing, trimming, folding
 * @param code what the QR code holds: the digests of document and job
 */
public record JobSheet(
        String title,
        String file,
        boolean good,
        String verdict,
        List<String> faults,
        List<JobNumbers.Entry> numbers,
        List<VolumeSettings> parts,
        int copies,
        Order order,
        List<List<String>> whatIf,
        List<List<String>> materials,
        List<Step> before,
        List<String> cautions,
        List<String> reasons,
        String digest,
        String jobId,
        String code) {
    private static final int SHORT = 16;
    private static final String PLAN = "Plan only";

    /**
     * Leaves bound as one.
     *
     * @param lifts of one copy, one line each
     * @param strokes of the punch for all copies
     * @param steps at the punch and the closer, which the operator works from
     */
    public record VolumeSettings(
            String name,
            List<OperatorSetting> settings,
            EdgeDrawing edge,
            List<String> lifts,
            long strokes,
            List<Step> steps) {
        public VolumeSettings {
            settings = List.copyOf(settings);
            lifts = List.copyOf(lifts);
            steps = List.copyOf(steps);
        }
    }

    public JobSheet {
        faults = List.copyOf(faults);
        numbers = List.copyOf(numbers);
        parts = List.copyOf(parts);
        whatIf = whatIf.stream().map(List::copyOf).toList();
        materials = materials.stream().map(List::copyOf).toList();
        before = List.copyOf(before);
        cautions = List.copyOf(cautions);
        reasons = List.copyOf(reasons);
    }

    /** The sheet of a report. A document with an error gets one too, which says so first. */
    public static JobSheet of(Report report) {
        boolean checked = report.documentChecked();
        boolean good = report.outcome() != Outcome.FINDINGS
                && report.findings().stream().noneMatch(f -> f.counts(Severity.ERROR));
        String digest = report.document().sha256();
        String jobId = jobId(report.job());
        return new JobSheet(
                report.document().heading(),
                report.document().fileName(),
                good,
                VerdictSentence.of(report),
                report.findings().stream()
                        .filter(f -> f.severity() != Severity.NOTE && f.accepted() == null)
                        .map(JobSheet::fault)
                        .toList(),
                JobNumbers.withoutFolders(report),
                parts(report),
                report.job().copies(),
                report.job().order(),
                WhatIfTable.withPages(report),
                SheetMaterials.rows(report.run().materials(), report.measures()),
                report.run().steps().stream()
                        .filter(s -> s.work().compareTo(Step.Work.SET_PUNCH) < 0)
                        .toList(),
                cautions(report),
                report.plan().because().stream()
                        .map(reason -> Sentences.of(reason, report.measures()))
                        .map(OperatorText::of)
                        .map(Capital::sentence)
                        .toList(),
                digest,
                jobId,
                "bind-prep " + (checked ? "sha256=" + digest + " " : "plan ") + "job=" + jobId);
    }

    // of the job as reports write it: the text of the record would name tables by their place in memory
    private static String jobId(Job job) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(JsonReport.job(job).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash).substring(0, SHORT);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String fault(Finding f) {
        return f.severity() + " " + FindingText.located(f, 8) + " Do: " + f.remedy();
    }

    private static List<VolumeSettings> parts(Report report) {
        List<BookPart> bound = BookPart.parts(report.block(), report.stack(), report.plan(), report.split());
        List<VolumeSettings> parts = new ArrayList<>();
        boolean top = report.job().bindingEdge() == BindingEdge.TOP;
        boolean checked = report.documentChecked();
        for (int i = 0; i < bound.size(); i++) {
            Plan plan = bound.get(i).plan();
            int volume = i + 1;
            List<Lift> lifts = report.run().lifts().stream()
                    .filter(l -> l.volume() == volume)
                    .toList();
            String name = bound.size() == 1
                    ? ""
                    : "Volume " + volume + " of " + bound.size()
                            + (checked ? pages(lifts) : pages(report.volumes().get(i)));
            List<Step> steps = atThePunch(
                    bound.size() == 1
                            ? report.run().steps()
                            : report.run().volumeSteps().get(i));
            parts.add(new VolumeSettings(
                    name,
                    OperatorSetting.of(plan, lifts, top, report),
                    new EdgeDrawing(plan, top, report.job().bindingEdge() == BindingEdge.LEFT, report.measures()),
                    lifts.stream().map(l -> lift(l, checked, report.measures())).toList(),
                    steps.stream()
                            .findFirst()
                            .map(step -> step.values().strokes())
                            .orElse(report.run().strokes()),
                    steps));
        }
        return parts;
    }

    /** Length of the bar that shows whether the sheet was printed at full size: as a ruler of the paper's units has it. */
    Length bar() {
        return measures().units() == Units.INCH ? Length.ofInch(4, 1) : Length.ofMm(100);
    }

    String barWords() {
        return measures().exact(bar());
    }

    private Measures measures() {
        return parts.get(0).edge().measures();
    }

    private static List<Step> atThePunch(List<Step> steps) {
        return steps.stream()
                .filter(s -> s.work().compareTo(Step.Work.JOG) >= 0)
                .toList();
    }

    /** The pages that lifts hold, ", pages 1-200"; empty where none is printed. */
    private static String pages(List<Lift> lifts) {
        IntSummaryStatistics pages = lifts.stream()
                .flatMap(l -> Stream.of(l.firstPage(), l.lastPage()))
                .filter(Objects::nonNull)
                .mapToInt(Integer::intValue)
                .summaryStatistics();
        return pages.getCount() == 0 ? "" : ", pages " + pages.getMin() + "-" + pages.getMax();
    }

    private static String pages(Volume planned) {
        return ", pages " + planned.firstPage() + "-" + planned.lastPage();
    }

    /** The answer in large print: the first sentence of the verdict. */
    public String answer() {
        return checked() ? verdict.substring(0, verdict.indexOf('.')) : good ? PLAN : "Do not bind";
    }

    /** Sentences that follow the answer and do not say it again. */
    public String grounds() {
        String rest = verdict.substring(verdict.indexOf('.') + 1).strip();
        return checked() ? rest : "No PDF was checked. " + rest.replace("Do not bind it. ", "");
    }

    /** Returns true if a document was checked. */
    public boolean checked() {
        return !digest.isEmpty();
    }

    private static String lift(Lift lift, boolean checked, Measures measures) {
        Integer first = lift.firstPage();
        Integer last = lift.lastPage();
        int to = lift.firstLeaf() + lift.leaves() - 1;
        String pages = !checked
                ? (lift.leaves() == 1 ? "number " + to : "numbers " + lift.firstLeaf() + "-" + to)
                : first == null || last == null
                        ? "blank"
                        : first.equals(last) ? "page " + first : "pages " + first + "-" + last;
        String kind = switch (lift.kind()) {
            case PAPER -> "";
            case BOARD -> "board ";
            case FILM -> "film ";
        };
        String one = lift.cover() ? "cover" : "leaf";
        String many = lift.cover() ? "covers" : "leaves";
        return lift.leaves() + " " + kind + (lift.leaves() == 1 ? one : many) + ", " + pages + ", "
                + measures.thickness(lift.thickness());
    }

    private static List<String> cautions(Report report) {
        Set<Caution> all = new LinkedHashSet<>(report.run().cautions());
        report.run().steps().forEach(s -> all.addAll(s.cautions()));
        return all.stream().map(c -> Sentences.of(c, report.measures())).toList();
    }

    /** The name of a step, "Print". */
    static String name(Step step) {
        return Capital.first(word(step.work()));
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
