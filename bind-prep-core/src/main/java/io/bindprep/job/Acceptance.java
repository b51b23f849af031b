package io.bindprep.job;

/**
 * A finding that someone has looked at and lets pass, as long as it stays what was seen.
 *
 * @param finding its id, "text-hit"
 * @param pages its pages as a report writes them, "14, 27-29"; "" for the whole document
 * @param reason why it may pass
 * @param who let it pass
 * @param seen the fingerprint of what was seen, as reports give it
 */
public record Acceptance(String finding, String pages, String reason, String who, String seen) {}
