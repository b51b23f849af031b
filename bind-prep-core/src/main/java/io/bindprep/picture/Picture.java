package io.bindprep.picture;

/**
 * Pixels, encoded.
 *
 * @param mediaType "image/png" or "image/jpeg"
 * @param base64 the file's bytes in base 64 (RFC 4648), without line breaks
 * @param width in pixels
 * @param height in pixels
 */
public record Picture(String mediaType, String base64, int width, int height) {
    @Override
    public String toString() {
        return "Picture[" + mediaType + ", " + width + " x " + height + "]";
    }
}
