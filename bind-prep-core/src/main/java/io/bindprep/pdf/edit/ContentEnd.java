package io.bindprep.pdf.edit;

import io.bindprep.pdf.syntax.Budget;
import io.bindprep.pdf.syntax.ContentSource;
import io.bindprep.pdf.syntax.Lexer;
import io.bindprep.pdf.syntax.Operands;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.io.IOException;
import java.util.Locale;
import org.apache.pdfbox.cos.COSBase;
import org.jspecify.annotations.Nullable;

/**
 * Operators after a page's content as if nothing had been drawn, however it leaves its states.
 *
 * <p>Content that restores no more states than it saved is put between a save and as many restores as it needs. One that
 * restores more is left bare, as a save before it would change what its stray restores do; then what it leaves of its
 * transform is undone, while a clip it leaves stays.
 */
final class ContentEnd {
    private int saved;
    private boolean strayRestore;
    private int texts;
    private int marked;
    private boolean broken;
    private final AffineTransform base = new AffineTransform();

    private ContentEnd() {}

    /**
     * State that content leaves.
     *
     * @throws Budget.Spent where it holds too much
     */
    static ContentEnd of(@Nullable COSBase contents, Budget budget) throws IOException {
        ContentEnd end = new ContentEnd();
        try (ContentSource source = new ContentSource(contents, budget)) {
            Lexer lexer = new Lexer(source);
            for (String operator = lexer.next(); operator != null; operator = lexer.next()) {
                budget.operator();
                end.operator(operator, lexer.operands());
            }
            end.broken = lexer.broken() || source.broken();
        }
        return end;
    }

    private void operator(String operator, Operands operands) {
        switch (operator) {
            case "q" -> saved++;
            case "Q" -> {
                strayRestore |= saved == 0;
                saved = Math.max(0, saved - 1);
            }
            case "cm" -> {
                if (saved == 0 && operands.size() >= 6) {
                    base.concatenate(matrix(operands));
                }
            }
            case "BT" -> texts = 1;
            case "ET" -> texts = 0;
            case "BMC", "BDC" -> marked++;
            case "EMC" -> marked = Math.max(0, marked - 1);
            default -> {
                // changes no state that outlives a restore
            }
        }
    }

    private static AffineTransform matrix(Operands o) {
        return new AffineTransform(o.number(0), o.number(1), o.number(2), o.number(3), o.number(4), o.number(5));
    }

    /** Returns true if it breaks off, so that what follows it might be swallowed. */
    boolean broken() {
        return broken;
    }

    /** Operators before it. */
    String before() {
        return strayRestore ? "" : "q\n";
    }

    /** Operators behind it, before anything else is drawn; null where its transform cannot be undone. */
    @Nullable
    String after() {
        String close = "\n" + (texts > 0 ? "ET\n" : "") + "EMC\n".repeat(marked) + "Q\n".repeat(saved);
        if (!strayRestore) {
            return close + "Q\n";
        }
        try {
            return close + (base.isIdentity() ? "" : operator(base.createInverse()));
        } catch (NoninvertibleTransformException e) {
            return null;
        }
    }

    /** A transform as an operator. */
    static String operator(AffineTransform t) {
        double[] m = new double[6];
        t.getMatrix(m);
        StringBuilder cm = new StringBuilder();
        for (double v : m) {
            cm.append(number(v)).append(' ');
        }
        return cm.append("cm\n").toString();
    }

    /** A number to six decimals, enough for a hundredth of a point on any sheet. */
    static String number(double v) {
        String text = String.format(Locale.ROOT, "%.6f", v);
        String plain = text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
        return plain.equals("-0") ? "0" : plain;
    }
}
