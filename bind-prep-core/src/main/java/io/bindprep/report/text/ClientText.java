package io.bindprep.report.text;

import io.bindprep.report.words.ClientMessage;
import io.bindprep.wording.FileNames;
import io.bindprep.wording.Markdown;

/** Writes a message to a designer as Markdown. */
public final class ClientText {
    private ClientText() {}

    /**
     * The message, ending in a line feed.
     *
     * @param pictures path of the same message with pictures; empty where there is none
     */
    public static String write(ClientMessage message, String pictures) {
        StringBuilder text = new StringBuilder("# Changes to ");
        text.append(Markdown.plain(message.file()))
                .append("\n\n")
                .append(message.opening())
                .append('\n');
        if (!message.pages().isEmpty()) {
            text.append('\n')
                    .append(
                            pictures.isEmpty()
                                    ? "Ask us for this message with pictures of the pages."
                                    : "With pictures of the pages: "
                                            + Markdown.link(FileNames.last(pictures), pictures))
                    .append('\n');
        }
        for (ClientMessage.Moves page : message.pages()) {
            text.append("\n## ").append(page.title()).append("\n\n");
            page.lines()
                    .forEach(line ->
                            text.append("- ").append(Markdown.plain(line)).append('\n'));
        }
        if (!message.more().isEmpty()) {
            text.append('\n').append(message.more()).append('\n');
        }
        if (!message.export().isEmpty()) {
            text.append("\n## When you export\n\n");
            message.export()
                    .forEach(line ->
                            text.append("- ").append(Markdown.plain(line)).append('\n'));
        }
        return text.toString();
    }
}
