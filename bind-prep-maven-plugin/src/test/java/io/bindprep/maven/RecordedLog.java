package io.bindprep.maven;

import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.logging.SystemStreamLog;

/** A log that keeps what a build at the usual level would show. */
final class RecordedLog extends SystemStreamLog {
    final List<String> lines = new ArrayList<>();

    @Override
    public void info(CharSequence content) {
        lines.add("info: " + content);
    }

    @Override
    public void warn(CharSequence content) {
        lines.add("warn: " + content);
    }

    @Override
    public void debug(Throwable error) {
        lines.add("debug: " + error);
    }
}
