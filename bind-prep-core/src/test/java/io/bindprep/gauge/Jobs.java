package io.bindprep.gauge;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.BlockBuilder;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchText;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.paper.StackEstimator;
import io.bindprep.table.NamedText;
import java.io.ByteArrayOutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Jobs with a punch of a file, as front ends make them. */
final class Jobs {
    /** A wire punch as a shop may have described it; 34 holes of A4 (German Wikipedia "Drahtkammbindung"). */
    static final String BENCH = """
            pattern: W3_1i-square-0t
            pins: 34
            depths: {one: 4.5 mm, two: 5.1 mm, three: 6 mm}
            """;

    private Jobs() {}

    static Job of(String punchFile, Map<String, Object> settings) throws Exception {
        Map<String, Object> all = new HashMap<>(settings);
        all.put("punch", "bench.yaml");
        return JobReader.toJob(JobSettings.of(all), new JobFiles(List.of(), new NamedText("bench.yaml", punchFile)));
    }

    static Job of(Punch punch, Map<String, Object> settings) throws Exception {
        return of(PunchText.of(punch), settings);
    }

    static Job named(Map<String, Object> settings) throws Exception {
        return JobReader.toJob(JobSettings.of(settings));
    }

    static byte[] pdf(Job job) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        TestSheetPdf.write(TestSheet.of(job), out);
        return out.toByteArray();
    }

    /** The plan of a few leaves. */
    static Plan plan(Job job, TestSheet sheet) throws Exception {
        var block = BlockBuilder.build(job, 20);
        var stocks = block.leaves().stream().map(l -> l.stock()).toList();
        return Planner.plan(job, block, StackEstimator.estimate(stocks, sheet.across(), sheet.edge()), sheet.edge());
    }
}
