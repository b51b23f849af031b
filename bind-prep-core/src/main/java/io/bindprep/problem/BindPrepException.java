package io.bindprep.problem;

/** Reason why a request got no report; the two kinds are told apart by type, never by text. */
public abstract sealed class BindPrepException extends Exception permits UnreadableInputException, SettingException {
    private static final long serialVersionUID = 1L;
    private final String remedy;

    BindPrepException(String message, String remedy) {
        super(message);
        this.remedy = remedy;
    }

    /** Remedy, one sentence for a person. */
    public final String remedy() {
        return remedy;
    }
}
