package io.bindprep.report.xjdf;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Method;
import io.bindprep.check.Report;
import io.bindprep.job.BindingEdge;
import io.bindprep.xml.XmlText;

/** The binding element in XJDF's words: twin-loop wire is a comb of wire there, told by its shape. */
final class LooseBinding {
    private final Report report;
    private final Plan plan;
    private final Method method;

    LooseBinding(Report report, Plan plan) {
        this.report = report;
        this.plan = plan;
        this.method = plan.method();
    }

    String bindingType() {
        return switch (method) {
            case WIRE, COMB -> "CombBinding";
            case COIL -> "CoilBinding";
            case RINGS -> "RingBinding";
        };
    }

    /** LooseBindingParams. */
    void params(XmlText xml) {
        xml.open("LooseBindingParams", "BindingType", bindingType());
        switch (method) {
            case WIRE ->
                xml.empty(
                        "CombBindingDetails",
                        "CombShape",
                        "Twin",
                        "Diameter",
                        diameter(),
                        "FlipBackCover",
                        // a wire's seam is hidden between the last leaf and the back cover (common practice, no source)
                        Boolean.toString(report.job().backCover() != null));
            case COMB -> xml.empty("CombBindingDetails", "Diameter", diameter());
            case COIL -> xml.empty("CoilBindingDetails", "Diameter", diameter());
            case RINGS -> xml.empty("RingBindingDetails", "Diameter", diameter());
        }
        xml.close();
    }

    /** BindingIntent's LooseBinding. */
    void intent(XmlText xml) {
        xml.open("LooseBinding", "Diameter", diameter());
        if (HolePattern.CATALOG.contains(plan.pattern())) {
            xml.empty("HolePattern", "Pattern", plan.pattern());
        }
        switch (method) {
            case WIRE -> xml.empty("CombBinding", "CombShape", "Twin", "Material", "Steel");
            case COMB -> xml.empty("CombBinding", "Material", "Plastic");
            case COIL -> xml.empty("CoilBinding");
            case RINGS -> xml.empty("RingBinding");
        }
        xml.close();
    }

    private String diameter() {
        Element element = plan.element();
        return element == null ? "" : Points.of(element.size());
    }

    static String edge(BindingEdge edge) {
        return switch (edge) {
            case LEFT -> "Left";
            case RIGHT -> "Right";
            case TOP -> "Top";
        };
    }
}
