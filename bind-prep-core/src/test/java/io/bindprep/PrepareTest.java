package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.request.CheckRequest;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrepareTest {
    private static final Path HANDBOOK =
            Path.of(System.getProperty("bindprep.root", ".."), "fixtures", "members-handbook-a4.pdf");

    @TempDir
    private Path folder;

    @Test
    void whatIsPreparedACheckNeedNotLoad() throws Exception {
        long prepared = loadedByCheck("prepare");
        assertThat(loadedByCheck("not") - prepared).as("classes").isGreaterThan(200);
    }

    private long loadedByCheck(String prepare) throws Exception {
        List<String> told = OwnMachine.run("128m", folder, Run.class, prepare);
        return Long.parseLong(told.get(0));
    }

    /** Says how many classes a check loads. */
    static final class Run {
        public static void main(String[] args) throws Exception {
            if (args[0].equals("prepare")) {
                BindPrep.prepare();
            }
            long before = ManagementFactory.getClassLoadingMXBean().getTotalLoadedClassCount();
            BindPrep.check(CheckRequest.of(HANDBOOK, "handbook.pdf", JobReader.toJob(JobSettings.empty())));
            System.out.println(ManagementFactory.getClassLoadingMXBean().getTotalLoadedClassCount() - before);
        }
    }
}
