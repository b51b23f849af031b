package io.bindprep.pdf.edit;

import io.bindprep.marks.Verdict;
import io.bindprep.proof.Comment;
import io.bindprep.proof.Outline;
import io.bindprep.proof.Strip;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;

/** The drawings of a proof's layers, in the binding-edge frame of a page, millimetres; pages that look alike share them. */
final class ProofForms {
    /** A circle as four curves: 4/3 (sqrt 2 - 1). */
    private static final double KAPPA = 0.5522847498;

    /** Paper around what is drawn, so that no line is cut. */
    private static final double AIR = 2;

    private static final String BLUE = "0.04 0.31 0.48";

    private final COSDocument document;
    private final Map<Strip, COSObject> strips = new HashMap<>();
    private final COSObject empty;
    private final COSObject resources;

    ProofForms(COSDocument document, ProofGroups groups) {
        this.document = document;
        this.resources = resources(groups);
        this.empty = nothing();
    }

    /** Holes and margin in one, as marked content of their layers: a form for each took a third of what a proof adds. */
    COSObject strip(Strip strip) {
        return strips.computeIfAbsent(strip, s -> {
            StringBuilder out = new StringBuilder(BLUE).append(" RG 0.25 w\n/OC /Holes BDC\n/Tint gs ");
            out.append(BLUE).append(" rg\n");
            rectangle(out, new Outline(false, 0, s.zoneMm(), 0, s.lengthMm())).append("f\n/Hole gs 1 1 1 rg\n");
            row(out, s.holes(), "B\n");
            out.append("0.12 w [0.4 0.4] 0 d\n");
            row(out, s.reach(), "S\n");
            out.append("EMC\n/OC /Margin BDC\n0.25 w [2.5 0.8 0.5 0.8] 0 d\n").append(number(s.marginMm()));
            out.append(" 0 m ").append(number(s.marginMm())).append(' ').append(number(s.lengthMm()));
            out.append(" l S\nEMC\n");
            return new COSObject(form(out, Math.max(s.zoneMm(), s.marginMm()), s.lengthMm()));
        });
    }

    /** Holes one from the other, so that a row of one pitch is the same few operators again and again, which packs well. */
    private static void row(StringBuilder out, List<Outline> holes, String paint) {
        double x = 0;
        double y = 0;
        out.append("q\n");
        for (Outline hole : holes) {
            double right = fine(hole.nearMm() - x);
            double up = fine(hole.startMm() - y);
            out.append("1 0 0 1 ")
                    .append(number(right))
                    .append(' ')
                    .append(number(up))
                    .append(" cm ");
            x += right;
            y += up;
            double deep = fine(hole.farMm() - hole.nearMm());
            shape(out, new Outline(hole.round(), 0, deep, 0, fine(hole.endMm() - hole.startMm())))
                    .append(paint);
        }
        out.append("Q\n");
    }

    /** A tenth of a micrometre: no screen shows less. */
    private static double fine(double mm) {
        return Math.round(mm * 1e4) / 1e4;
    }

    /** Begins what {@link #hits} outlines, the same for many pages. */
    static String beforeHits(String layer, List<Comment> comments) {
        return "/OC /" + layer + " BDC 3.5 w 0.1 0 0 0.1 0 0 cm\n" + pen(comments.get(0));
    }

    /** Solid outlines for what is punched, dashed ones for the rest; marked content, shorter than a form for each page. */
    COSObject hits(List<Comment> comments) {
        StringBuilder out = new StringBuilder();
        String last = pen(comments.get(0));
        for (Comment c : comments) {
            String pen = pen(c);
            if (!pen.equals(last)) {
                out.append("S\n").append(pen);
                last = pen;
            }
            for (Outline o : c.marks()) {
                tenths(out, o.nearMm(), o.startMm(), o.farMm() - o.nearMm(), o.endMm() - o.startMm());
                out.append("re\n");
            }
        }
        return NewObjects.shorter(document, out.append("S EMC Q\n").toString());
    }

    private static String pen(Comment c) {
        return c.verdict() == Verdict.HIT ? "0.7 0 0.18 RG [] 0 d\n" : "0.54 0.29 0 RG [12 7] 0 d\n";
    }

    /** Nothing at all: what annotations show whose place the layer outlines. One for all, as its box is fitted to theirs. */
    COSObject empty() {
        return empty;
    }

    private COSObject nothing() {
        COSStream form = packed("");
        form.setItem(COSName.TYPE, COSName.XOBJECT);
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        form.setItem(COSName.BBOX, NewObjects.numbers(0, 0, 1, 1));
        return new COSObject(form);
    }

    private static StringBuilder rectangle(StringBuilder out, Outline o) {
        return out.append(number(o.nearMm()))
                .append(' ')
                .append(number(o.startMm()))
                .append(' ')
                .append(number(o.farMm() - o.nearMm()))
                .append(' ')
                .append(number(o.endMm() - o.startMm()))
                .append(" re ");
    }

    private static StringBuilder shape(StringBuilder out, Outline o) {
        if (!o.round()) {
            return rectangle(out, o);
        }
        double x = (o.nearMm() + o.farMm()) / 2;
        double y = (o.startMm() + o.endMm()) / 2;
        double a = (o.farMm() - o.nearMm()) / 2;
        double b = (o.endMm() - o.startMm()) / 2;
        points(out, x + a, y).append("m ");
        curve(out, x + a, y + KAPPA * b, x + KAPPA * a, y + b, x, y + b);
        curve(out, x - KAPPA * a, y + b, x - a, y + KAPPA * b, x - a, y);
        curve(out, x - a, y - KAPPA * b, x - KAPPA * a, y - b, x, y - b);
        curve(out, x + KAPPA * a, y - b, x + a, y - KAPPA * b, x + a, y);
        return out.append("h ");
    }

    private static void curve(StringBuilder out, double... points) {
        points(out, points).append("c ");
    }

    private static StringBuilder points(StringBuilder out, double... points) {
        for (double p : points) {
            out.append(number(p)).append(' ');
        }
        return out;
    }

    /** As fine as the words beside them, and three times shorter. */
    private static void tenths(StringBuilder out, double... mm) {
        for (double v : mm) {
            out.append(Math.round(v * 10)).append(' ');
        }
    }

    private static String number(double v) {
        return ContentEnd.number(v);
    }

    private COSStream form(StringBuilder operators, double deep, double length) {
        COSStream form = packed(operators.toString());
        form.setItem(COSName.TYPE, COSName.XOBJECT);
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        form.setItem(COSName.BBOX, NewObjects.numbers(-AIR, -AIR, deep + AIR, length + AIR));
        form.setItem(COSName.RESOURCES, resources);
        return form;
    }

    private static COSObject resources(ProofGroups groups) {
        COSDictionary states = new COSDictionary();
        states.setItem(COSName.getPDFName("Tint"), filled(0.14f));
        states.setItem(COSName.getPDFName("Hole"), filled(0.5f));
        COSDictionary resources = new COSDictionary();
        resources.setItem(COSName.EXT_G_STATE, states);
        COSDictionary layers = new COSDictionary();
        layers.setItem(COSName.getPDFName("Holes"), groups.holes());
        layers.setItem(COSName.getPDFName("Margin"), groups.margin());
        resources.setItem(COSName.PROPERTIES, layers);
        return new COSObject(resources);
    }

    private static COSDictionary filled(float opacity) {
        COSDictionary state = new COSDictionary();
        state.setItem(COSName.CA_NS, new COSFloat(opacity));
        return state;
    }

    private COSStream packed(String operators) {
        return NewObjects.packed(document, operators);
    }
}
