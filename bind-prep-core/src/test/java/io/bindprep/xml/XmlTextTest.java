package io.bindprep.xml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class XmlTextTest {
    @Test
    void elementsAreIndentedAndEndInALineFeed() {
        String xml = new XmlText()
                .open("a", "b", "1", "c", "")
                .leaf("d", "text")
                .empty("e")
                .close()
                .finish();
        assertThat(xml)
                .isEqualTo("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<a b=\"1\">\n  <d>text</d>\n  <e/>\n</a>\n");
    }

    @Test
    void anyTextComesBackFromTheJdksParser() throws Exception {
        String hard = "<&>\"' ]]> größe \uD83D\uDCD6 \u20AC";
        Element root = Parsed.of(new XmlText()
                        .open("a", "b", hard)
                        .leaf("c", hard + "\n" + hard)
                        .close()
                        .finish())
                .getDocumentElement();
        assertThat(root.getAttribute("b")).isEqualTo(hard);
        assertThat(root.getElementsByTagName("c").item(0).getTextContent()).isEqualTo(hard + "\n" + hard);
    }

    // XML 1.0 (fifth edition), 2.2: Char; direction marks and C1 controls are lawful there but not on a screen
    @Test
    void whatXmlCannotHoldAndWhatRewritesAScreenIsReplaced() throws Exception {
        String bad = "\u0000\u0001\u000B\u001B\u007F\u0085\u202E\uD800\uFFFE";
        Element root = Parsed.of(new XmlText()
                        .open("a", "b", "x" + bad + "\n\ty")
                        .close()
                        .finish())
                .getDocumentElement();
        assertThat(root.getAttribute("b")).isEqualTo("x" + "\uFFFD".repeat(bad.length() + 2) + "y");
    }

    @Test
    void anOpenElementIsAFault() {
        assertThatThrownBy(() -> new XmlText().open("a").finish()).isInstanceOf(IllegalStateException.class);
    }
}
