package io.bindprep.problem;

import java.util.List;

/** An explicit setting that is wrong; it is never replaced by a guess. */
public final class SettingException extends BindPrepException {
    private static final long serialVersionUID = 1L;
    private final String key;
    private final String value;
    private final List<String> known;

    /**
     * A wrong setting.
     *
     * @param key the job key, dotted where nested ({@code covers.front})
     * @param value what was given, as text
     * @param message what is wrong with it
     * @param remedy what to do
     * @param known the values or keys that would do, empty where they cannot be listed
     */
    public SettingException(String key, String value, String message, String remedy, List<String> known) {
        super(message, remedy);
        this.key = key;
        this.value = value;
        this.known = List.copyOf(known);
    }

    /** The job key, dotted where nested. */
    public String key() {
        return key;
    }

    /** Given value, as text. */
    public String value() {
        return value;
    }

    /** The values or keys that would do; empty where they cannot be listed. */
    public List<String> known() {
        return known;
    }
}
