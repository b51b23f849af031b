package io.bindprep.problem;

/** The input is not a PDF that can be read whole: nothing about it is known to be good. */
public final class UnreadableInputException extends BindPrepException {
    private static final long serialVersionUID = 1L;

    /** Way in which the input failed. */
    public enum Reason {
        /** No such file. */
        MISSING,
        /** A directory or another thing that is not a plain file. */
        NOT_A_FILE,
        /** No byte in it. */
        EMPTY,
        /** A file of another type. */
        NOT_PDF,
        /** A password is needed, or the one given is wrong. */
        LOCKED,
        /** Encrypted in a way that cannot be opened with a password. */
        ENCRYPTED_OTHERWISE,
        /** A PDF, but broken. */
        DAMAGED,
        /** Too large or too slow to read within the bounds; the cause is the error where memory ran short. */
        TOO_MUCH,
        /** The system refused to read it. */
        REFUSED
    }

    private final Reason reason;

    /** An input that failed for a reason, what is wrong with it and what to ask the client for. */
    public UnreadableInputException(Reason reason, String message, String remedy) {
        super(message, remedy);
        this.reason = reason;
    }

    /** Way in which the input failed. */
    public Reason reason() {
        return reason;
    }
}
