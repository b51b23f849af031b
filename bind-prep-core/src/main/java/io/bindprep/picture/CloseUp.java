package io.bindprep.picture;

/** An enlarged piece of the strip along the binding edge, as the reader sees the page. */
public record CloseUp(CloseUpWindow window, Picture picture) {}
