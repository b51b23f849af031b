package io.bindprep.request;

import java.nio.file.Path;

/**
 * Request for a proof.
 *
 * @param output the file to write; its folder must exist
 * @param outputName how reports call it
 * @param flaggedOnly whether only pages that are not clear are written
 */
public record ProofRequest(CheckRequest check, Path output, String outputName, boolean flaggedOnly) {}
