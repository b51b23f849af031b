package io.bindprep.maven;

import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.maven.plugin.logging.Log;
import org.jspecify.annotations.Nullable;

/**
 * The checks of one build of one project: of several goals over the same bytes and the same job only the first looks at the
 * document. Lives in the plugin's context, which goes with the build's session, and yields where memory runs short.
 */
final class BuildChecks {
    private final Engine engine;
    private final Map<String, Job> jobs = new ConcurrentHashMap<>();
    private final Map<Key, SoftReference<Report>> reports = new ConcurrentHashMap<>();

    private record Key(
            String sha256, String name, Job job, @Nullable String password) {
        @Override
        public String toString() {
            return "Key[" + name + "]";
        }
    }

    BuildChecks(Engine engine) {
        this.engine = engine;
    }

    /**
     * Those of this build.
     *
     * @param context the plugin's, one for each project of a build
     */
    @SuppressWarnings("unchecked") // Maven's own signature
    static BuildChecks of(Map<?, ?> context, Engine engine) {
        Object known = ((Map<Object, Object>) context)
                .computeIfAbsent(BuildChecks.class.getName(), name -> new BuildChecks(engine));
        // of another class loader where a POM has the plugin twice with other libraries
        return known instanceof BuildChecks checks ? checks : new BuildChecks(engine);
    }

    /** The same with the job object of whoever asked for the same first, as what is the same job shows in its text. */
    JobSource.Asked known(JobSource.Asked asked) {
        Job job = jobs.computeIfAbsent(asked.text(), text -> asked.job());
        return new JobSource.Asked(asked.settings(), asked.files(), job, asked.inputs());
    }

    /** The report of a document: that of an earlier goal where bytes, name, job and password are the same. */
    Report check(CheckRequest request, Log log) throws UnreadableInputException, SettingException {
        Optional<String> now = digest(request);
        if (now.isPresent()) {
            SoftReference<Report> earlier = reports.get(key(now.get(), request));
            Report report = earlier == null ? null : earlier.get();
            if (report != null) {
                log.debug(request.name() + ": checked earlier in this build");
                return report;
            }
        }
        Report report = engine.check(request);
        // by what was looked at, which may be newer than what was summed up before
        reports.put(key(report.document().sha256(), request), new SoftReference<>(report));
        return report;
    }

    private static Key key(String sha256, CheckRequest request) {
        return new Key(sha256, request.name(), request.job(), request.password());
    }

    private static Optional<String> digest(CheckRequest request) {
        try {
            return Optional.of(Digests.of(request.file()));
        } catch (IOException e) {
            return Optional.empty(); // the check says why
        }
    }
}
