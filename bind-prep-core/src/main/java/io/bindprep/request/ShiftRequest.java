package io.bindprep.request;

import io.bindprep.repair.ShiftSettings;
import java.nio.file.Path;

/**
 * Request for a repair.
 *
 * @param check the document and its job
 * @param output the file to write, never the input itself; one that is there is replaced
 * @param outputName how reports call it
 */
public record ShiftRequest(CheckRequest check, Path output, String outputName, ShiftSettings settings) {}
