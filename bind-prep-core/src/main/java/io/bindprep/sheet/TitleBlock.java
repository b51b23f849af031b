package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import io.nayuki.qrcodegen.QrCode;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Head of a sheet: the document's name at any length, lines for the job's own numbers, the digests as a QR code. */
final class TitleBlock {
    private static final double CODE = 21;

    private final JobSheet sheet;
    private final Type plain;
    private final Type bold;

    TitleBlock(JobSheet sheet, Type plain, Type bold) {
        this.sheet = sheet;
        this.plain = plain;
        this.bold = bold;
    }

    void paint(Flow flow) throws IOException {
        Ink ink = flow.ink();
        double top = flow.y();
        double right = flow.left() + flow.room();
        code(ink, right - CODE, top);
        ink.text(bold, 9.5, flow.left(), top + 3.2, "JOB SHEET");
        double room = flow.room() - CODE - 6;
        double size = bold.lines(sheet.title(), 17, room).size() == 1 ? 17 : 11;
        double at = top + 4.5;
        for (String line : bold.lines(sheet.title(), size, room)) {
            at += size * 0.42;
            ink.text(bold, size, flow.left(), at - 1, line);
        }
        double fields = Math.max(at + 5, top + CODE - 5);
        field(ink, flow.left(), fields, room * 0.2, "Job no.", sheet.order().number());
        field(
                ink,
                flow.left() + room * 0.22,
                fields,
                room * 0.34,
                "Customer",
                sheet.order().customer());
        field(
                ink,
                flow.left() + room * 0.58,
                fields,
                room * 0.18,
                "Due",
                sheet.order().due());
        field(ink, flow.left() + room * 0.78, fields, room * 0.1, "Initials", null);
        ink.text(
                bold,
                9.5,
                flow.left() + room * 0.9,
                fields + 3,
                sheet.copies() + (sheet.copies() == 1 ? " copy" : " copies"));
        flow.down(fields + 6 - top);
    }

    /** A line to write on, its name below, and what the job says upon it. */
    private void field(Ink ink, double x, double y, double width, String name, @Nullable String value)
            throws IOException {
        ink.width(0.2);
        ink.line(x, y + 1, x + width, y + 1);
        ink.text(plain, 7, x, y + 4, name);
        if (value == null) {
            return;
        }
        double size = 10;
        while (size > 6 && bold.lines(value, size, width).size() > 1) {
            size -= 0.5;
        }
        List<String> lines = bold.lines(value, size, width);
        boolean whole = lines.size() == 1;
        ink.text(
                bold,
                size,
                x,
                y + 0.2,
                whole ? lines.get(0) : bold.lines(value, size, width - 3).get(0) + " …");
    }

    private void code(Ink ink, double x, double y) throws IOException {
        QrCode code = QrCode.encodeText(sheet.code(), QrCode.Ecc.MEDIUM);
        double module = CODE / code.size;
        for (int row = 0; row < code.size; row++) {
            for (int column = 0; column < code.size; column++) {
                if (code.getModule(column, row)) {
                    ink.box(x + column * module, y + row * module, module, module, true);
                }
            }
        }
    }
}
