package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import io.nayuki.qrcodegen.QrCode;
import java.io.IOException;

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
        field(ink, flow.left(), fields, room * 0.2, "Job no.");
        field(ink, flow.left() + room * 0.22, fields, room * 0.34, "Customer");
        field(ink, flow.left() + room * 0.58, fields, room * 0.18, "Due");
        field(ink, flow.left() + room * 0.78, fields, room * 0.1, "Initials");
        ink.text(
                bold,
                9.5,
                flow.left() + room * 0.9,
                fields + 3,
                sheet.copies() + (sheet.copies() == 1 ? " copy" : " copies"));
        flow.down(fields + 6 - top);
    }

    /** A line to write on, its name below. */
    private void field(Ink ink, double x, double y, double width, String name) throws IOException {
        ink.width(0.2);
        ink.line(x, y + 1, x + width, y + 1);
        ink.text(plain, 7, x, y + 4, name);
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
