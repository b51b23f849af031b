package io.bindprep.pdf;

import io.bindprep.files.PdfSource;
import io.bindprep.pdf.document.Digest;
import io.bindprep.pdf.document.FileIdentity;
import io.bindprep.pdf.document.FileKinds;
import io.bindprep.pdf.document.FileMarkers;
import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.document.LeanParser;
import io.bindprep.problem.SharedMemory;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Function;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.tika.Tika;

/** Opens a file that claims to be a PDF, or says what it is instead and what to ask the client for. */
public final class Intake {
    private static final long IN_MEMORY = 32L * 1024 * 1024;

    private Intake() {}

    /** Loads what opening a file needs: PDFBox prepares tables, and Java its graphics. */
    public static void prepare() {
        try {
            new PDDocument().close();
        } catch (IOException e) {
            throw new IllegalStateException("a document of ours that is nowhere", e);
        }
    }

    /**
     * Opens a PDF.
     *
     * @throws UnreadableInputException where it is not a PDF that can be opened, with what to ask the client for
     */
    public static OpenedPdf open(PdfSource source) throws UnreadableInputException {
        return open(source, LeanDocument.MANY);
    }

    /**
     * Opens a PDF without working out its digest, which takes as long as reading a plain book: one that was opened before.
     *
     * @param sha256 its digest; empty where nothing is written of it
     * @throws UnreadableInputException as {@link #open}
     */
    public static OpenedPdf known(PdfSource source, String sha256) throws UnreadableInputException {
        return open(source, file -> Digest.of(sha256), LeanDocument.MANY);
    }

    /**
     * Opens a PDF once more for another thread.
     *
     * @param first the same file, open and as it was then
     * @throws UnreadableInputException as {@link #open}, and where it is another file by now
     */
    public static OpenedPdf again(PdfSource source, OpenedPdf first) throws UnreadableInputException {
        Path file = source.file();
        String name = source.name();
        try {
            if (!FileIdentity.of(file).equals(first.state())) {
                throw new UnreadableInputException(
                        Reason.REFUSED, name + " changed while it was read.", "Check it again once it is whole.");
            }
            return load(source, FileMarkers.of(file), first.digest().shared(), LeanDocument.MANY);
        } catch (IOException e) {
            throw refused(name);
        }
    }

    static UnreadableInputException refused(String name) {
        return new UnreadableInputException(
                Reason.REFUSED,
                name + " cannot be read: the system refused it.",
                "Check that the file is still there and that you may read it.");
    }

    /** As above, letting go of what was parsed of pages where so many objects were met. */
    public static OpenedPdf open(PdfSource source, int many) throws UnreadableInputException {
        return open(source, Digest::begin, many);
    }

    private static OpenedPdf open(PdfSource source, Function<Path, Digest> digest, int many)
            throws UnreadableInputException {
        Path file = source.file();
        String name = source.name();
        try {
            checkPlainFile(file, name);
            FileMarkers ends = FileMarkers.of(file);
            checkType(file, name, ends);
            if (!ends.pointer()) {
                throw damaged(name + " breaks off before its end: it has no pointer to its table of contents"
                        + " (\"startxref\"), so pages may be missing.");
            }
            return load(source, ends, digest.apply(file), many);
        } catch (NoSuchFileException e) {
            throw missing(name);
        } catch (IOException e) {
            throw refused(name);
        }
    }

    private static void checkPlainFile(Path file, String name) throws UnreadableInputException, IOException {
        if (!Files.exists(file)) {
            throw missing(name);
        }
        if (!Files.isRegularFile(file)) {
            throw new UnreadableInputException(
                    Reason.NOT_A_FILE,
                    name + (Files.isDirectory(file) ? " is a folder, not a file." : " is not a plain file."),
                    "Name the PDF file itself.");
        }
        if (Files.size(file) == 0) {
            throw new UnreadableInputException(
                    Reason.EMPTY,
                    name + " is empty: it has no byte in it.",
                    "Ask for the file again: it was lost on the way or never written.");
        }
    }

    private static UnreadableInputException missing(String name) {
        return new UnreadableInputException(
                Reason.MISSING, "There is no file " + name + ".", "Check the name and the folder.");
    }

    private static UnreadableInputException damaged(String message) {
        return new UnreadableInputException(
                Reason.DAMAGED,
                message,
                "Ask for the file again, exported afresh and sent as an archive or by a link so that it arrives whole.");
    }

    /** The type by the bytes alone: a name proves nothing. */
    private static void checkType(Path file, String name, FileMarkers ends)
            throws IOException, UnreadableInputException {
        if (ends.headerAt() == 0) {
            return; // loading Tika takes half as long as a check of one page
        }
        if (ends.headerDamaged()) {
            throw damaged(name + " is a PDF whose header is damaged: it does not begin with \"%PDF-\" and a version.");
        }
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(64 * 1024);
        }
        String type = new Tika().detect(head);
        boolean plain =
                type.startsWith("text/") || type.equals("application/octet-stream") || type.contains("postscript");
        if (type.equals("application/pdf") || ends.headerAt() >= 0 && plain) {
            return;
        }
        throw new UnreadableInputException(
                Reason.NOT_PDF,
                name + " is not a PDF: it is " + FileKinds.describe(type) + ".",
                FileKinds.remedy(type));
    }

    private static OpenedPdf load(PdfSource source, FileMarkers ends, Digest digest, int many)
            throws IOException, UnreadableInputException {
        Path file = source.file();
        String name = source.name();
        String password = source.password();
        long begun = System.nanoTime();
        PDDocument document = null;
        OpenedPdf opened = null;
        try {
            FileIdentity state = FileIdentity.of(file);
            RandomAccessReadBufferedFile bytes = new RandomAccessReadBufferedFile(file.toFile());
            LeanParser parser = new LeanParser(
                    bytes,
                    password == null ? "" : password,
                    MemoryUsageSetting.setupMixed(IN_MEMORY).streamCache,
                    many);
            document = parser.parse();
            opened = OpenedPdf.of(document, parser.lean(), name, digest, ends, state, begun);
            return opened;
        } catch (InvalidPasswordException e) {
            throw new UnreadableInputException(
                    Reason.LOCKED,
                    password == null
                            ? name + " is locked with a password."
                            : name + " is locked, and the password given does not open it.",
                    "Ask for the password or for a copy without one.");
        } catch (IOException | RuntimeException | StackOverflowError | LinkageError e) {
            throw SharedMemory.ranShort(e) ? SharedMemory.tooMuch(name, e) : notOpened(name, e);
        } finally {
            if (opened == null) {
                digest.cancel();
                if (document != null) {
                    document.close();
                }
            }
        }
    }

    private static UnreadableInputException notOpened(String name, Throwable e) {
        String why = String.valueOf(e.getMessage());
        // the library for certificates is not shipped: a key store is no way to hand over a print job
        if (e instanceof LinkageError
                || why.contains("security handler")
                || why.contains("keystore")
                || why.contains("decryption material")
                || why.contains("recipient")) {
            return new UnreadableInputException(
                    Reason.ENCRYPTED_OTHERWISE,
                    name + " is encrypted for certain recipients or in a way that no password opens.",
                    "Ask for a copy without encryption.");
        }
        return damaged(name + " is a PDF, but so damaged that it cannot be opened.");
    }
}
