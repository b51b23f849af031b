package io.bindprep.pdf.document;

import java.util.Map;

/** Names of what a file is instead of a PDF, and what to ask for. */
public final class FileKinds {
    private static final String OFFICE = "a word-processor, spreadsheet or slides file";

    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("application/msword", "a word-processor file"),
            Map.entry("application/x-tika-ooxml", OFFICE),
            Map.entry("application/x-tika-msoffice", "a word-processor, spreadsheet or slides file in an old format"),
            Map.entry("application/rtf", "a rich text document"),
            Map.entry("application/postscript", "a PostScript file"),
            Map.entry("application/zip", "a ZIP archive"),
            Map.entry("application/gzip", "a compressed file"),
            Map.entry("application/epub+zip", "an e-book"),
            Map.entry("text/html", "a web page"),
            Map.entry("text/plain", "plain text"),
            Map.entry("application/octet-stream", "a file of an unknown kind"));

    private FileKinds() {}

    public static String describe(String type) {
        if (type.startsWith("image/")) {
            return "a picture (" + type + ")";
        }
        if (type.startsWith("application/vnd.oasis.opendocument")) {
            return "a word-processor, spreadsheet or slides file (OpenDocument)";
        }
        if (type.startsWith("application/vnd.openxmlformats")) {
            return OFFICE;
        }
        return NAMES.getOrDefault(type, "a file of the type " + type);
    }

    public static String remedy(String type) {
        if (type.startsWith("image/")) {
            return "Ask for a PDF made from the original document, at the size it is to be printed.";
        }
        if (type.contains("zip")) {
            return "Unpack it and check the PDF inside.";
        }
        return "Ask for a print-ready PDF exported from the program that made it, with fonts embedded.";
    }
}
