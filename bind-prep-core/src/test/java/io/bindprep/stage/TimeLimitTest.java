package io.bindprep.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class TimeLimitTest {
    private static Object run(Error thrown) throws Exception {
        return TimeLimit.run("book.pdf", bound -> {
            throw thrown;
        });
    }

    /** As Java 17 throws it for a class whose preparation ran out of memory before. */
    private static Error unprepared(String why) {
        return (Error) new NoClassDefFoundError("Could not initialize class X")
                .initCause(new ExceptionInInitializerError("Exception " + why + " [in thread \"check\"]"));
    }

    @Test
    void whatWantsMemoryIsToldSoHoweverJavaWrapsIt() {
        OutOfMemoryError memory = new OutOfMemoryError("Java heap space");
        for (Error error : List.of(
                memory,
                new InternalError(memory),
                new BootstrapMethodError(memory),
                unprepared("java.lang.OutOfMemoryError: Java heap space"),
                new StackOverflowError())) {
            assertThatThrownBy(() -> run(error))
                    .as(error.toString())
                    .isInstanceOfSatisfying(
                            UnreadableInputException.class,
                            e -> assertThat(e.reason()).isEqualTo(Reason.TOO_MUCH))
                    .hasMessage("book.pdf asks for more memory than there is.");
        }
    }

    @Test
    void aSmallFileHasLittleTimeToBeOpened() {
        assertThat(TimeLimit.opening(62_000)).isEqualTo(Duration.ofMillis(2062));
        assertThat(TimeLimit.opening(3_000_000)).isEqualTo(Duration.ofSeconds(5));
        assertThat(TimeLimit.opening(900_000_000)).isEqualTo(Duration.ofSeconds(15));
        AtomicBoolean ended = new AtomicBoolean();
        assertThatThrownBy(() -> TimeLimit.run("book.pdf", limit -> {
                    limit.openingFor(1);
                    while (!ended.get()) {
                        Thread.onSpinWait();
                    }
                    return null;
                }))
                .hasMessage("book.pdf takes too long to read.");
        ended.set(true);
    }

    @Test
    void whatIsAMistakeOfOursStaysOne() {
        for (Error error : List.of(new AssertionError("x"), unprepared("java.lang.IllegalStateException: x"))) {
            assertThatIllegalStateException().isThrownBy(() -> run(error)).withCause(error);
        }
    }
}
