package io.bindprep.pdf.edit;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/**
 * Standards that a file says it keeps to: PDF/A in its metadata (ISO 19005-1:2005, 6.7.11), PDF/X there (ISO 15930-7:2010,
 * 6.2) or in its information dictionary (ISO 15930-1:2001, 6.13).
 */
final class Claims {
    private static final int MOST_METADATA = 1024 * 1024;
    private static final COSName VERSION = COSName.getPDFName("GTS_PDFXVersion");
    private static final COSName CONFORMANCE = COSName.getPDFName("GTS_PDFXConformance");
    private static final Pattern PART = property("pdfaid:part", "([1-4])");
    private static final Pattern LEVEL = property("pdfaid:conformance", "([ABUEFabuef])");
    private static final Pattern X_VERSION = property("pdfxid:GTS_PDFXVersion", "(PDF/X-[\\w:. -]{1,24})");
    private static final Pattern X_NAME = Pattern.compile("PDF/X-[\\w:. -]{1,24}");

    private Claims() {}

    /** As an attribute or as an element. */
    private static Pattern property(String name, String value) {
        return Pattern.compile(name + "(?:\\s*=\\s*[\"']|\\s*>)\\s*" + value);
    }

    /** Names such as "PDF/A-1b" and "PDF/X-4"; empty where the file claims none. */
    static List<String> of(COSDictionary trailer, COSDictionary catalog) {
        String metadata = metadata(catalog);
        List<String> claims = new ArrayList<>();
        Matcher part = PART.matcher(metadata);
        if (part.find()) {
            Matcher level = LEVEL.matcher(metadata);
            claims.add("PDF/A-" + part.group(1) + (level.find() ? level.group(1).toLowerCase(Locale.ROOT) : ""));
        }
        COSDictionary information = trailer.getCOSDictionary(COSName.INFO);
        String named = information == null ? "" : information.getString(VERSION, "");
        Matcher x = X_VERSION.matcher(metadata);
        if (X_NAME.matcher(named).matches()) {
            claims.add(named);
        } else if (x.find()) {
            claims.add(x.group(1).strip());
        }
        return claims;
    }

    /** Takes the claims out, with the metadata that hold them; output intents stay, as they say how colours are meant. */
    static void drop(COSDictionary trailer, COSDictionary catalog) {
        catalog.removeItem(COSName.METADATA);
        COSDictionary information = trailer.getCOSDictionary(COSName.INFO);
        if (information != null) {
            information.removeItem(VERSION);
            information.removeItem(CONFORMANCE);
        }
    }

    private static String metadata(COSDictionary catalog) {
        if (!(catalog.getDictionaryObject(COSName.METADATA) instanceof COSStream stream)) {
            return "";
        }
        try (InputStream in = stream.createInputStream()) {
            // UTF-16 and UTF-32 with or without a mark: names and levels are ASCII, the rest is not looked at
            StringBuilder text = new StringBuilder();
            for (byte octet : in.readNBytes(MOST_METADATA)) {
                if (octet != 0) {
                    text.append((char) (octet & 0xff));
                }
            }
            return text.toString();
        } catch (IOException e) {
            return "";
        }
    }
}
