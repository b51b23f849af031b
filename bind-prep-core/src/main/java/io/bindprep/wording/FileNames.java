package io.bindprep.wording;

import java.util.regex.Pattern;

/** Names of files as callers give them, written on any system. */
public final class FileNames {
    private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:[\\\\/].*", Pattern.DOTALL);
    private static final String SHARE = "\\\\";

    private FileNames() {}

    /** The name without its folders. */
    public static String last(String file) {
        return file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    }

    /** Returns true for a path that begins at a root, a drive or a share. */
    public static boolean absolute(String file) {
        return file.startsWith("/") || file.startsWith(SHARE) || drive(file);
    }

    /** Returns true for a path that begins at a drive. */
    public static boolean drive(String file) {
        return DRIVE.matcher(file).matches();
    }

    /** A relative path without the "./" that says no more. */
    public static String relative(String file) {
        return file.startsWith("./") ? file.substring(2) : file;
    }

    /** Name that says nothing of a machine's folders: a relative path with slashes, of an absolute one the last part. */
    public static String portable(String file) {
        return absolute(file) ? last(file) : relative(file.replace('\\', '/'));
    }
}
