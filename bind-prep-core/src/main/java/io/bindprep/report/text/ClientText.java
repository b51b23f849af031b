package io.bindprep.report.text;

import io.bindprep.report.words.ClientMessage;
import io.bindprep.wording.Printable;

/** Writes a message to a designer as Markdown. */
public final class ClientText {
    private ClientText() {}

    /** The message, ending in a line feed. */
    public static String write(ClientMessage message) {
        StringBuilder text = new StringBuilder("# Changes to ");
        text.append(plain(message.file()))
                .append("\n\n")
                .append(message.opening())
                .append('\n');
        for (ClientMessage.Moves page : message.pages()) {
            text.append("\n## ").append(page.title()).append("\n\n");
            page.lines().forEach(line -> text.append("- ").append(plain(line)).append('\n'));
        }
        if (!message.more().isEmpty()) {
            text.append('\n').append(message.more()).append('\n');
        }
        if (!message.export().isEmpty()) {
            text.append("\n## When you export\n\n");
            message.export()
                    .forEach(line -> text.append("- ").append(plain(line)).append('\n'));
        }
        return text.toString();
    }

    // the document's own words are no markup
    private static String plain(String text) {
        return Printable.line(text).replaceAll("([\\\\`*_\\[\\]<>#|&~!])", "\\\\$1");
    }
}
