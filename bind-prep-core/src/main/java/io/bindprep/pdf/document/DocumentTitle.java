package io.bindprep.pdf.document;

import io.bindprep.wording.Printable;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/**
 * The title in a PDF's information dictionary (ISO 32000-1:2008, 14.3.3), else in its metadata (14.3.2), where it is one a
 * person would use.
 */
public final class DocumentTitle {
    private static final int LONGEST = 120;

    /** Characters looked at: a title may be as long as the file. */
    private static final int MOST_READ = 2_000;

    /** Titles that programs put in by themselves: no title, or the name of the file they worked on. */
    private static final Pattern JUNK = Pattern.compile(
            "(?iu)untitled([ -]?\\d+)?|.*\\.(docx?|docm|rtf|odt|xlsx?|ods|pptx?|odp|indd|qxp|pub|afpub|sla|tex|dvi|ai|psd|eps|ps|pdf|html?|txt)|.*[/\\\\].*\\.\\w{1,5}");

    private DocumentTitle() {}

    /** The title on one line, or empty where there is none of use. */
    public static String read(@Nullable COSDictionary trailer) {
        try {
            COSDictionary info = trailer == null ? null : trailer.getCOSDictionary(COSName.INFO);
            String title = info == null ? "" : clean(info.getString(COSName.TITLE, ""));
            COSDictionary catalog = trailer == null ? null : trailer.getCOSDictionary(COSName.ROOT);
            return title.isEmpty() && catalog != null ? clean(XmpTitle.read(catalog)) : title;
        } catch (RuntimeException | StackOverflowError e) {
            // PDFBox could not read it: the file's name serves
            return "";
        }
    }

    static String clean(String raw) {
        String line = Printable.line(raw.length() <= MOST_READ ? raw : raw.substring(0, MOST_READ));
        if (JUNK.matcher(line).matches()) {
            return "";
        }
        return line.codePointCount(0, line.length()) <= LONGEST
                ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST - 3)).strip() + "...";
    }
}
