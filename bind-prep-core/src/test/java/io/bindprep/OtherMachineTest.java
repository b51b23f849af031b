package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.json.JsonReport;
import io.bindprep.request.CheckRequest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Values that a check on another machine needs go there and back by Java serialization, whole. */
class OtherMachineTest {
    private static final Path FIXTURES = Path.of(System.getProperty("bindprep.root"), "fixtures");

    @Test
    void jobThatWasSentGivesTheSameReport() throws Exception {
        JobSettings settings = JobSettings.read(
                        Files.readString(FIXTURES.resolve("cookbook-job.yaml")), "cookbook-job.yaml")
                .with("tables", "shop-stocks.csv")
                .with("stock", "felt-200")
                .with("punch", "shop-punch.yaml");
        JobFiles files = JobFiles.read(settings, (file, beside) -> Files.readString(FIXTURES.resolve(Path.of(file))));
        assertThat(files.tables()).hasSize(1);
        assertThat(files.punch()).isNotNull();
        assertThat(report(JobReader.toJob(sent(settings), sent(files))))
                .isEqualTo(report(JobReader.toJob(settings, files)))
                .contains("felt-200");
    }

    private static String report(Job job) throws Exception {
        Path file = FIXTURES.resolve("cookbook-letter.pdf");
        return JsonReport.line(BindPrep.check(CheckRequest.of(file, "cookbook-letter.pdf", job)), true);
    }

    /** The place in the job file is known on the other side too. */
    @Test
    void whatIsWrongWithAJobIsSaidOnTheOtherSideAsHere() throws Exception {
        JobSettings settings = JobSettings.read("copies: 2\nsides: tow\n", "job.yaml");
        SettingException here = catchThrowableOfType(SettingException.class, () -> JobReader.toJob(settings));
        JobSettings there = sent(settings);
        SettingException back = sent(catchThrowableOfType(SettingException.class, () -> JobReader.toJob(there)));
        assertThat(back).hasMessage(here.getMessage()).hasMessageContaining("line 2");
        assertThat(back.key()).isEqualTo("sides");
        assertThat(back.value()).isEqualTo("tow");
        assertThat(back.remedy()).isEqualTo(here.remedy());
        assertThat(back.known()).isEqualTo(here.known()).contains("two");
    }

    @Test
    void whyAFileCannotBeReadComesBack() throws Exception {
        Job job = JobReader.toJob(JobSettings.of(Map.of()));
        UnreadableInputException here = catchThrowableOfType(
                UnreadableInputException.class,
                () -> BindPrep.check(CheckRequest.of(FIXTURES.resolve("word-file.pdf"), "word-file.pdf", job)));
        UnreadableInputException back = sent(here);
        assertThat(back.reason()).isEqualTo(UnreadableInputException.Reason.NOT_PDF);
        assertThat(back).hasMessage(here.getMessage());
        assertThat(back.remedy()).isEqualTo(here.remedy());
    }

    @SuppressWarnings("unchecked") // what comes back is of the class that was sent
    private static <T> T sent(T value) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }
}
