package io.bindprep.job;

import io.bindprep.setting.FileText;
import io.bindprep.setting.KeyDescription;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes a job file to begin with. */
public final class JobText {
    private static final String INTRODUCTION = """
            The job: one key a line, then a colon, a blank and the value; quotes go round a value
            that holds a colon followed by a blank.
            Lengths have their unit: mm or in, fractions too. Every key may be left out.""";

    private JobText() {}

    /** Every key with its meaning and the built-in value, YAML, ending in a line feed; it asks for what no job file at all does. */
    public static String builtIn() {
        Map<String, String> values = new LinkedHashMap<>();
        for (KeyDescription key : JobReader.descriptions()) {
            if (key.builtIn() != null) {
                values.put(key.key(), key.builtIn());
            }
        }
        return FileText.of(INTRODUCTION, JobReader.descriptions(), values);
    }
}
