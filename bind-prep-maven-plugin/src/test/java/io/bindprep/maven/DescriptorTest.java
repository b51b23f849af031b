package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.ReportFormat;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The goal as Maven is told of it: phase, properties, and each default of an empty configuration. */
class DescriptorTest {
    private static final XPath XPATH = XPathFactory.newInstance().newXPath();
    private static final String CHECK = "/plugin/mojos/mojo[goal='check']";

    @Test
    void theGoal() throws Exception {
        assertThat(text("/plugin/goalPrefix")).isEqualTo("bind-prep");
        assertThat(text(CHECK + "/phase")).isEqualTo("verify");
        assertThat(text(CHECK + "/threadSafe")).isEqualTo("true");
        assertThat(text(CHECK + "/requiresProject")).isEqualTo("false");
        assertThat(text("/plugin/mojos/mojo[goal='help']/goal")).isEqualTo("help");
    }

    @Test
    void everyDefaultAndProperty() throws Exception {
        NodeList nodes = (NodeList) XPATH.evaluate(CHECK + "/configuration/*", descriptor(), XPathConstants.NODESET);
        Map<String, String> found = new LinkedHashMap<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            Element e = (Element) nodes.item(i);
            found.put(e.getTagName(), e.getTextContent() + "=" + e.getAttribute("default-value"));
        }
        assertThat(found)
                .containsOnly(
                        Map.entry("baseDirectory", "=${basedir}"),
                        Map.entry("buildDirectory", "=${project.build.directory}"),
                        Map.entry("documents", "${bindprep.documents}="),
                        Map.entry("failIfNoFiles", "${bindprep.failIfNoFiles}=false"),
                        Map.entry("failOn", "${bindprep.failOn}="),
                        Map.entry("formats", "${bindprep.formats}=json,text"),
                        Map.entry("jobFile", "${bindprep.jobFile}="),
                        Map.entry(
                                "reportDirectory", "${bindprep.reportDirectory}=${project.build.directory}/bind-prep"),
                        Map.entry("skip", "${bindprep.skip}=false"));
    }

    @Test
    void theFormatsAreToldOf() throws Exception {
        assertThat(text(CHECK + "/parameters/parameter[name='formats']/description"))
                .contains(ReportFormat.ids());
    }

    private static String text(String path) throws Exception {
        return XPATH.evaluate(path, descriptor());
    }

    private static Document descriptor() throws Exception {
        try (InputStream in = DescriptorTest.class.getResourceAsStream("/META-INF/maven/plugin.xml")) {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
        }
    }
}
