package io.bindprep.pdf.edit;

import io.bindprep.pdf.document.LeanDocument;
import io.bindprep.pdf.document.LeanParser;
import io.bindprep.pdf.document.PageTree;
import io.bindprep.problem.UnreadableInputException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * Opens a copy anew by its own table of contents, with nothing guessed, before it takes the place of a file: a damaged
 * document may open with much lenience and be written as one that nothing opens.
 */
public final class CopyCheck {
    private static final long IN_MEMORY = 32L * 1024 * 1024;

    private CopyCheck() {}

    /**
     * Faults of a copy.
     *
     * @param reach how many things each of its pages has to reach, as {@link EditedPdf#reach} counts
     * @return nothing where it is whole
     */
    public static Optional<String> fault(Path copy, List<Integer> reach) {
        List<Integer> found = new ArrayList<>();
        try (RandomAccessReadBufferedFile bytes = new RandomAccessReadBufferedFile(copy.toFile())) {
            LeanParser parser =
                    new LeanParser(bytes, "", MemoryUsageSetting.setupMixed(IN_MEMORY).streamCache, LeanDocument.MANY);
            try (PDDocument document = parser.parse(false)) {
                LeanDocument objects = parser.lean();
                COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
                COSDictionary root = catalog.getCOSDictionary(COSName.PAGES);
                objects.keep(false);
                PageTree.walk(root, objects, page -> found.add(reach(page, page.getCOSDictionary(COSName.RESOURCES))));
            }
        } catch (IOException | UnreadableInputException | RuntimeException | StackOverflowError e) {
            return Optional.of("Opened anew, the copy could not be read: the file is too damaged to be written again.");
        }
        if (found.size() != reach.size()) {
            return Optional.of("Opened anew, the copy would show " + found.size() + " pages where " + reach.size()
                    + " belong: the file is too damaged to be written again.");
        }
        for (int page = 1; page <= found.size(); page++) {
            if (found.get(page - 1) < reach.get(page - 1)) {
                return Optional.of(
                        "Opened anew, page " + page + " of the copy would lack things that the file has there.");
            }
        }
        return Optional.empty();
    }

    /** Content, resources and annotations that a page refers to and that are there. */
    static int reach(COSDictionary page, @Nullable COSDictionary resources) {
        int reach = there(page.getCOSArray(COSName.ANNOTS));
        COSBase contents = page.getDictionaryObject(COSName.CONTENTS);
        // several streams may become one
        reach += contents instanceof COSStream || contents instanceof COSArray several && there(several) > 0 ? 1 : 0;
        if (resources != null) {
            for (COSName kind : resources.keySet()) {
                if (resources.getDictionaryObject(kind) instanceof COSDictionary entries) {
                    for (COSName name : entries.keySet()) {
                        reach += there(entries.getDictionaryObject(name)) ? 1 : 0;
                    }
                }
            }
        }
        return reach;
    }

    private static int there(@Nullable COSArray things) {
        int there = 0;
        for (int i = 0; things != null && i < things.size(); i++) {
            there += there(things.getObject(i)) ? 1 : 0;
        }
        return there;
    }

    private static boolean there(@Nullable COSBase thing) {
        return thing != null && !(thing instanceof COSNull);
    }
}
