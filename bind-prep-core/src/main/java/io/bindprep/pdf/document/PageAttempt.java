package io.bindprep.pdf.document;

import io.bindprep.pdf.syntax.Budget;
import io.bindprep.problem.SharedMemory;
import java.awt.geom.NoninvertibleTransformException;
import java.io.IOException;
import java.util.function.Function;

/** Work on one page of a hostile file: its answer, or the reason why there is none; nothing is thrown. */
public final class PageAttempt {
    private PageAttempt() {}

    /** Work on a page. */
    public interface Work<T> {
        T run() throws IOException, NoninvertibleTransformException;
    }

    /**
     * Runs work on a page.
     *
     * @param faulty reason where the content is at fault; PDFBox's own messages say nothing to people
     * @param none answer that tells a reason
     */
    public static <T> T answer(Work<T> work, String faulty, Function<String, T> none) {
        try {
            return SharedMemory.<T, Exception>orElse(work::run, () -> none.apply(SharedMemory.PAGE_ASKS_TOO_MUCH));
        } catch (Budget.Spent e) {
            return none.apply(String.valueOf(e.getMessage()));
        } catch (StackOverflowError e) {
            return none.apply("it is nested too deep");
        } catch (Exception e) {
            return none.apply(faulty);
        }
    }
}
