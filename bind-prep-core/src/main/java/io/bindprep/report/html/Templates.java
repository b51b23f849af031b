package io.bindprep.report.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Printable;
import java.util.Map;

/** The compiled templates; what they are given is escaped as HTML asks. */
public final class Templates {
    private static final String PACKAGE = "io.bindprep.report.html.template";

    private Templates() {}

    /** The page that a template makes of its parameters. */
    public static String rendered(String template, Map<String, Object> parameters) {
        // the caller's own class loader may not see the templates, as in a Maven plugin
        TemplateEngine engine =
                TemplateEngine.createPrecompiled(null, ContentType.Html, Templates.class.getClassLoader(), PACKAGE);
        StringOutput out = new StringOutput();
        engine.render(template, parameters, out);
        return LengthText.glued(Printable.page(out.toString()));
    }
}
