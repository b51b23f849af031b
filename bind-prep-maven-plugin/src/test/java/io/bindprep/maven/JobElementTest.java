package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import org.codehaus.plexus.configuration.xml.XmlPlexusConfiguration;
import org.codehaus.plexus.util.xml.Xpp3DomBuilder;
import org.junit.jupiter.api.Test;

class JobElementTest {
    @Test
    void elementsAreTheKeysOfAJobFileInEitherSpelling() throws Exception {
        assertThat(
                        settings(
                                "<bindingEdge> left </bindingEdge><binding-margin>3/8 in</binding-margin><failOn>never</failOn>"))
                .isEqualTo(Map.of("binding-edge", "left", "binding-margin", "3/8 in", "fail-on", "never"));
    }

    @Test
    void nestedElementsAreMaps() throws Exception {
        assertThat(settings(
                        "<covers><front>film-75</front><back><stock>tag-150</stock><pages>9</pages></back></covers>"))
                .isEqualTo(
                        Map.of("covers", Map.of("front", "film-75", "back", Map.of("stock", "tag-150", "pages", "9"))));
        assertThat(settings("<covers><front>film-75</front></covers>"))
                .isEqualTo(Map.of("covers", Map.of("front", "film-75")));
    }

    @Test
    void aPluralThatHoldsOnlyItsSingularIsAList() throws Exception {
        assertThat(settings("<inserts><insert><pages>5-8</pages><stock>tag-150</stock></insert>"
                        + "<insert>20 on index-110</insert></inserts>"))
                .isEqualTo(Map.of("inserts", List.of(Map.of("pages", "5-8", "stock", "tag-150"), "20 on index-110")));
    }

    @Test
    void anEmptyElementIsAnEmptyValueNotAMissingOne() throws Exception {
        assertThat(settings("<stock/>")).isEqualTo(Map.of("stock", ""));
        assertThat(settings("")).isEmpty();
    }

    @Test
    void aKeyIsNamedByItsElements() {
        assertThat(JobElement.named("binding-edge")).isEqualTo("<job><bindingEdge>");
        assertThat(JobElement.named("covers.front")).isEqualTo("<job><covers><front>");
        assertThat(JobElement.named("inserts[2].stock")).isEqualTo("<job><inserts>[2]<stock>");
    }

    static XmlPlexusConfiguration job(String content) throws Exception {
        return new XmlPlexusConfiguration(Xpp3DomBuilder.build(new StringReader("<job>" + content + "</job>")));
    }

    private static Map<String, Object> settings(String content) throws Exception {
        return JobElement.settings(job(content));
    }
}
