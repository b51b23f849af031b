package io.bindprep.check;

import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.PageVerdict;
import io.bindprep.wording.PageLists;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A short value for what a finding saw: its id, pages, numbers, words, and each mark it is about with its place to 0.1 mm.
 * Whatever moves, gets worse or comes anew changes it; another wording of the same does not.
 */
public final class Fingerprint {
    private static final int HEX = 16;
    // numbers and quoted words of a message; its prose may be worded anew
    private static final Pattern VALUES = Pattern.compile("\\d+(?:\\.\\d+)?|\"[^\"]*\"");

    private Fingerprint() {}

    /** The value of a finding, 16 hexadecimal digits. */
    public static String of(Finding finding, List<PageVerdict> verdicts) {
        StringBuilder seen = new StringBuilder(finding.rule());
        seen.append('\n').append(PageLists.compact(finding.pages())).append('\n');
        Matcher values = VALUES.matcher(finding.message());
        while (values.find()) {
            seen.append(values.group()).append(' ');
        }
        boolean ofContent =
                FindingKinds.of(finding.rule()).filter(FindingKind::ofContent).isPresent();
        if (ofContent) {
            for (int page : finding.pages()) {
                marks(verdicts.get(page - 1), seen);
            }
        }
        return digest(seen.toString());
    }

    private static void marks(PageVerdict page, StringBuilder seen) {
        seen.append('\n').append(page.page()).append(' ').append(page.verdict());
        for (Hit hit : page.hits()) {
            Mark mark = hit.mark();
            seen.append('\n').append(mark.kind()).append(' ').append(hit.verdict());
            for (double mm : List.of(mark.nearMm(), mark.alongStartMm(), mark.alongEndMm())) {
                seen.append(String.format(Locale.ROOT, " %.1f", mm));
            }
            seen.append(' ').append(mark.words());
        }
    }

    private static String digest(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum).substring(0, HEX);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
