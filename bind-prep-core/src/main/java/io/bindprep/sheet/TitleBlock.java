package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import io.nayuki.qrcodegen.QrCode;
import java.io.IOException;

/** Whose sheet it is: the document's name at any length, the digests, and both in a QR code. */
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
        at = Math.max(at + 3, top + CODE - 4.2);
        ink.text(plain, 7, flow.left(), at, "document sha256 " + sheet.digest());
        ink.text(
                plain,
                7,
                flow.left(),
                at + 3.4,
                "job " + sheet.jobId() + " · " + sheet.copies() + (sheet.copies() == 1 ? " copy" : " copies"));
        flow.down(at + 6.2 - top);
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
