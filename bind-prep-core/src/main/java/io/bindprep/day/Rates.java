package io.bindprep.day;

import io.bindprep.problem.SettingException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Rates of a shop for work and supplies, by its own file; nothing is built in. A null is a rate that the shop does not give.
 *
 * @param name of the file
 * @param currency as the shop writes it
 * @param strokesPerMinute of the punch
 * @param setupMinutes for each setting that is made anew
 * @param minutesPerJob whatever its size: papers, waste sheet, carrying
 * @param minutesPerBook gathering, threading and closing one book or volume
 * @param costPerHour of the work
 * @param pricePerSheet by stock, or by stock and size as the list of supplies writes it, "bond-20, 148 x 210 mm"
 * @param pricePerCover as for sheets
 * @param pricePerElement by method and size, "wire 3/8 in"; for one piece
 * @param loopsPerSpool by method and size; what is not named comes in pieces
 */
public record Rates(
        String name,
        String currency,
        @Nullable Amount strokesPerMinute,
        Map<Setting, Amount> setupMinutes,
        @Nullable Amount minutesPerJob,
        @Nullable Amount minutesPerBook,
        @Nullable Amount costPerHour,
        Map<String, Amount> pricePerSheet,
        Map<String, Amount> pricePerCover,
        Map<String, Amount> pricePerElement,
        Map<String, Integer> loopsPerSpool) {
    public Rates {
        setupMinutes = Map.copyOf(setupMinutes);
        pricePerSheet = Map.copyOf(pricePerSheet);
        pricePerCover = Map.copyOf(pricePerCover);
        pricePerElement = Map.copyOf(pricePerElement);
        loopsPerSpool = Map.copyOf(loopsPerSpool);
    }

    /**
     * Reads a file of rates: JSON where its name ends in {@code .json}, else YAML 1.2. A rate is a number, or two with "to"
     * between them: "20 to 30".
     *
     * @param text what it says, at most a million characters
     * @param name how errors and quotes call it
     * @throws SettingException where a key or value is wrong, under the key {@code rates}
     */
    public static Rates read(String text, String name) throws SettingException {
        return RatesReader.read(text, name);
    }

    /** Every key that such a file knows. */
    public static List<String> keys() {
        return RateKeys.ALL;
    }
}
