package io.bindprep;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.check.Report;
import io.bindprep.day.Day;
import io.bindprep.day.DayJob;
import io.bindprep.day.DayPlanner;
import io.bindprep.day.Rates;
import io.bindprep.gauge.Calibration;
import io.bindprep.gauge.Calibrator;
import io.bindprep.gauge.Readings;
import io.bindprep.gauge.TestSheet;
import io.bindprep.gauge.TestSheetPdf;
import io.bindprep.job.Job;
import io.bindprep.pdf.Intake;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.PicturePair;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.proof.ProofReport;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.SplitReport;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.PlanRequest;
import io.bindprep.request.ProofRequest;
import io.bindprep.request.ShiftRequest;
import io.bindprep.stage.DocumentCheck;
import io.bindprep.stage.PictureScan;
import io.bindprep.stage.PilePlan;
import io.bindprep.stage.proof.ProofDrawing;
import io.bindprep.stage.repair.DocumentRepair;
import io.bindprep.stage.repair.VolumeRepair;
import io.bindprep.unit.Length;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The facade: one request in, one report out.
 *
 * <p>Stateless, for any number of threads at once; each call reads one document on threads of its own with deep stacks,
 * bounded in time, and opens no network connection. It prints nothing, ends nothing, and asks no clock, locale or time
 * zone: the same file, name and job give the same report anywhere.
 *
 * <p>Units: an {@link Length} is exact, in whole 1/914400 in; a name that ends in {@code Mm} holds millimetres, one in
 * {@code Um} micrometres, one in {@code In} inches. On a page a place is the distance from the binding edge and the distance along
 * it, of the trimmed leaf as its reader sees it.
 *
 * <p>Sources: hole patterns follow XJDF 2.2 (CIP4) and RFC 3806, basis weights and calipers the US Government Paper
 * Specification Standards (JCP), page boxes ISO 32000-1:2008, cutting tolerances ISO 216. Each row of the tables names its
 * own; what is only common practice says so.
 *
 * <p>Errors: of the two checked exceptions each says what is wrong and {@linkplain
 * io.bindprep.problem.BindPrepException#remedy() what to do}. An {@link IllegalStateException} is a mistake of ours, or an
 * interrupt.
 */
public final class BindPrep {
    private BindPrep() {}

    /**
     * Loads what a first check needs, about a tenth of the time of a small file: for a program that can do something else
     * meanwhile, as reading its options. Need not be called.
     */
    public static void prepare() {
        Catalogue.builtIn();
        Intake.prepare();
    }

    /**
     * Checks one PDF against one job. {@link Report#failed()} is the answer, the findings are why; a page that could not
     * be analysed is in it as not checked, never as clear.
     *
     * @throws UnreadableInputException where the file is not a PDF that can be opened; nothing about it is known to be good
     * @throws SettingException where the job asks for what the document or the trade does not have
     */
    public static Report check(CheckRequest request) throws UnreadableInputException, SettingException {
        return DocumentCheck.run(request);
    }

    /**
     * Plans one job without a document, from its leaves, size, stocks and covers alone. The report says nothing of any page:
     * {@link Report#documentChecked()} is false, its outcome never {@link io.bindprep.check.Outcome#GOOD}.
     *
     * @throws SettingException where the job asks for what the trade does not have, or names no trim
     */
    public static Report plan(PlanRequest request) throws SettingException {
        return PilePlan.run(request);
    }

    /**
     * The day at the punch of several jobs: the order that changes the die least, then depth, pins and closer; what changes
     * from job to job; the supplies of all.
     *
     * @param jobs in the order given, at least one, none twice by name
     * @param rates of the shop, for time and cost; null for none
     */
    public static Day day(List<DayJob> jobs, @Nullable Rates rates) {
        return DayPlanner.plan(jobs, rates);
    }

    /**
     * Repairs one PDF: content moved clear of the holes, pages added where the settings ask for it. The input is not
     * changed; the output is written whole, once its own check has confirmed it, or not at all.
     *
     * @throws UnreadableInputException where the file is not a PDF that can be opened
     * @throws SettingException where the job or the settings ask for what the document or the trade does not have
     * @throws IOException where the output cannot be written
     */
    public static ShiftReport shift(ShiftRequest request)
            throws UnreadableInputException, SettingException, IOException {
        return DocumentRepair.run(request);
    }

    /**
     * Writes the volumes that the check proposes for a book too thick for any element, each with its own covers and repaired
     * as {@link #shift} does, beside the output that the request names: book-1.pdf, book-2.pdf. The input stays as it is.
     *
     * @return what was written, or why nothing was
     * @throws UnreadableInputException if the input cannot be analysed at all
     * @throws SettingException if the job's settings do not go together
     * @throws IOException where a file cannot be written; those of earlier volumes may stand then
     */
    public static SplitReport split(ShiftRequest request)
            throws UnreadableInputException, SettingException, IOException {
        return VolumeRepair.run(request);
    }

    /**
     * Draws a proof of one PDF: the holes, the margin and the findings as layers and annotations over a copy. The
     * input is not changed; the output is written whole or not at all.
     *
     * @throws UnreadableInputException where the file is not a PDF that can be opened
     * @throws SettingException where the job asks for what the document or the trade does not have
     * @throws IOException where the output cannot be written
     */
    public static ProofReport proof(ProofRequest request)
            throws UnreadableInputException, SettingException, IOException {
        return proof(request, check(request.check()));
    }

    /**
     * Draws a proof as {@link #proof(ProofRequest)} does, of a document that has been checked already.
     *
     * @param report what {@link #check} said to the same request, of the same bytes; otherwise an {@link
     *     IllegalStateException}
     * @throws UnreadableInputException where the file cannot be opened any more
     * @throws SettingException as {@link #proof(ProofRequest)}
     * @throws IOException where the output cannot be written
     */
    public static ProofReport proof(ProofRequest request, Report report)
            throws UnreadableInputException, SettingException, IOException {
        return new ProofDrawing(request, report).run();
    }

    /**
     * Writes the test sheet of a job's punch as a PDF: what to punch and read to see how the punch stands. Needs no
     * document.
     *
     * @param out is left open
     * @return what was drawn
     * @throws SettingException where punch, pitch, depth and trim do not go together, or the sheet is too small to read
     * @throws IOException where the stream cannot be written
     */
    public static TestSheet testSheet(Job job, OutputStream out) throws SettingException, IOException {
        TestSheet sheet = TestSheet.of(job);
        TestSheetPdf.write(sheet, out);
        return sheet;
    }

    /**
     * Turns readings of a punched test sheet into the errors of the job's punch.
     *
     * @param afresh whether what the punch's file holds from earlier measurements is dropped
     * @throws SettingException where a reading cannot be, or contradicts another or an earlier measurement
     */
    public static Calibration calibrate(Job job, Readings readings, boolean afresh) throws SettingException {
        return Calibrator.calibrate(job, readings, afresh);
    }

    /**
     * Pictures of the pages of a report that are not clear, for {@link io.bindprep.report.html.HtmlReport}: at most 30, those punched first,
     * then those not checked, then those tight, and none further once they take 12 MB. In page order. Opens the file again.
     *
     * @param request the one that the report came from; its progress is told of pictures
     * @throws UnreadableInputException where the file cannot be opened any more
     */
    public static List<PagePicture> pictures(CheckRequest request, Report report) throws UnreadableInputException {
        return PictureScan.run(request, report);
    }

    /**
     * Pictures of pages that a repair changed, before and after, for {@link io.bindprep.report.html.HtmlReport}: at most 12
     * of them, those with findings first; none where nothing was written. Opens both files again.
     *
     * @param request the one that the report came from
     * @throws UnreadableInputException where a file cannot be opened any more
     */
    public static List<PicturePair> pictures(ShiftRequest request, ShiftReport report) throws UnreadableInputException {
        return PictureScan.run(request, report);
    }
}
