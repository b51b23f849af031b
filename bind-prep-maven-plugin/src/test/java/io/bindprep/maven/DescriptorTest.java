package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.ReportFormat;
import io.bindprep.sheet.SheetFormat;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The goal as Maven is told of it: phase, properties, and each default of an empty configuration. */
class DescriptorTest {
    private static final XPath XPATH = XPathFactory.newInstance().newXPath();

    @ParameterizedTest
    @CsvSource({"check, verify", "spec, package", "proof, package"})
    void theGoals(String goal, String phase) throws Exception {
        assertThat(text("/plugin/goalPrefix")).isEqualTo("bind-prep");
        assertThat(text(mojo(goal) + "/phase")).isEqualTo(phase);
        assertThat(text(mojo(goal) + "/threadSafe")).isEqualTo("true");
        assertThat(text(mojo(goal) + "/requiresProject")).isEqualTo("false");
    }

    @Test
    void theOldestMavenAndJava() throws Exception {
        assertThat(text("/plugin/requiredMavenVersion")).isEqualTo("3.6.3");
        assertThat(text("/plugin/requiredJavaVersion")).isEqualTo("17");
    }

    @Test
    void thereIsHelp() throws Exception {
        assertThat(text("/plugin/mojos/mojo[goal='help']/goal")).isEqualTo("help");
    }

    @ParameterizedTest
    @CsvSource({
        "check, 'failOnNew ${bindprep.failOnNew}=false; formats ${bindprep.formats}=json,text; since ${bindprep.since}='",
        "spec, 'paper ${bindprep.paper}=a4; sheetFormats ${bindprep.sheetFormats}=pdf'",
        "proof, 'flagged ${bindprep.flagged}=false'"
    })
    void everyDefaultAndProperty(String goal, String own) throws Exception {
        List<String> found = new ArrayList<>();
        for (Element e : elements(mojo(goal) + "/configuration/*")) {
            found.add(e.getTagName() + " " + e.getTextContent() + "=" + e.getAttribute("default-value"));
        }
        List<String> expected = new ArrayList<>(List.of(own.split("; ")));
        expected.addAll(List.of(
                "attach ${bindprep.attach}=false",
                "baseDirectory =${basedir}",
                "buildDirectory =${project.build.directory}",
                "documents ${bindprep.documents}=",
                "execution =${mojoExecution}",
                "failIfNoFiles ${bindprep.failIfNoFiles}=",
                "failOn ${bindprep.failOn}=",
                "force ${bindprep.force}=false",
                "jobFile ${bindprep.jobFile}=",
                "password ${bindprep.password}=",
                "passwordFile ${bindprep.passwordFile}=",
                "project =${project}",
                "reportDirectory ${bindprep.reportDirectory}=${project.build.directory}/bind-prep",
                "serverId ${bindprep.serverId}=",
                "settings =${settings}",
                "skip ${bindprep.skip}=false"));
        assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void everyParameterThatCanBeSetIsDescribed() throws Exception {
        List<Element> parameters = elements("/plugin/mojos/mojo/parameters/parameter[editable='true']");
        assertThat(parameters).hasSizeGreaterThan(40);
        for (Element parameter : parameters) {
            assertThat(XPATH.evaluate("description", parameter).strip())
                    .as(XPATH.evaluate("../../goal", parameter) + " " + XPATH.evaluate("name", parameter))
                    .hasSizeGreaterThan(15)
                    .endsWith(".");
        }
        for (Element mojo : elements("/plugin/mojos/mojo")) {
            assertThat(XPATH.evaluate("description", mojo)).isNotBlank();
        }
    }

    @Test
    void developmentEnvironmentsKnowEveryGoal() throws Exception {
        try (InputStream in =
                DescriptorTest.class.getResourceAsStream("/META-INF/m2e/lifecycle-mapping-metadata.xml")) {
            Document m2e =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
            List<String> goals = new ArrayList<>();
            NodeList nodes = (NodeList) XPATH.evaluate("//goal", m2e, XPathConstants.NODESET);
            for (int i = 0; i < nodes.getLength(); i++) {
                goals.add(nodes.item(i).getTextContent());
            }
            List<String> bound = new ArrayList<>();
            for (Element mojo : elements("/plugin/mojos/mojo[phase]")) {
                bound.add(XPATH.evaluate("goal", mojo));
            }
            assertThat(goals).containsExactlyInAnyOrderElementsOf(bound);
        }
    }

    @Test
    void theFormatsAreToldOf() throws Exception {
        assertThat(text(mojo("check") + "/parameters/parameter[name='formats']/description"))
                .contains(ReportFormat.ids());
        assertThat(text(mojo("spec") + "/parameters/parameter[name='sheetFormats']/description"))
                .contains(SheetFormat.ids());
    }

    @Test
    void whatTheReadmeShowsCanBeWritten() throws Exception {
        String readme = Files.readString(Path.of(System.getProperty("bindprep.root"), "README.md"))
                + Files.readString(Path.of(System.getProperty("bindprep.root"), "bind-prep-maven-plugin/README.md"));
        List<String> blocks = Pattern.compile("```xml\\n(.*?)```", Pattern.DOTALL)
                .matcher(readme)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(blocks).hasSizeGreaterThanOrEqualTo(3);
        List<String> known = new ArrayList<>();
        for (Element name : elements("/plugin/mojos/mojo/parameters/parameter[editable='true']/name")) {
            known.add(name.getTextContent());
        }
        for (String block : blocks) {
            Document shown = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(block)));
            NodeList set = (NodeList) XPATH.evaluate("//configuration/*", shown, XPathConstants.NODESET);
            for (int i = 0; i < set.getLength(); i++) {
                assertThat(known).contains(set.item(i).getNodeName());
            }
            if (shown.getDocumentElement().getTagName().equals("plugin")) {
                assertThat(XPATH.evaluate("//artifactId", shown)).isEqualTo(text("/plugin/artifactId"));
                assertThat(XPATH.evaluate("//version", shown)).isEqualTo(text("/plugin/version"));
            }
        }
    }

    private static String mojo(String goal) {
        return "/plugin/mojos/mojo[goal='" + goal + "']";
    }

    private static List<Element> elements(String path) throws Exception {
        NodeList nodes = (NodeList) XPATH.evaluate(path, descriptor(), XPathConstants.NODESET);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
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
