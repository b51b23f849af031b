package example;

import io.bindprep.BindPrep;
import io.bindprep.check.Finding;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.nio.file.Path;
import java.util.Map;

/** Says of each PDF that it is given whether to print it. */
final class PrintOrNot {
    public static void main(String[] files) throws SettingException {
        // the keys of a job file; a wrong one is a SettingException that lists what is known
        Job job = JobReader.toJob(JobSettings.of(Map.of("stock", "offset-60", "pitch", "3:1")));
        for (String file : files) {
            Path pdf = Path.of(file);
            String name = pdf.getFileName().toString();
            try {
                Report report = BindPrep.check(CheckRequest.of(pdf, name, job));
                System.out.println(name + (report.failed() ? ": do not print" : ": print"));
                for (Finding finding : report.findings()) {
                    // its message says where and how much, its remedy what to do
                    if (finding.severity() == Severity.ERROR) {
                        System.out.println("  " + finding.rule() + " " + finding.pages());
                    }
                }
            } catch (UnreadableInputException e) {
                // nothing about such a file is known to be good
                System.out.println(name + ": " + e.reason());
            }
        }
    }
}
