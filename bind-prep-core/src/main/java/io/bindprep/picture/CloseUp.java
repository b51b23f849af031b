package io.bindprep.picture;

/** An enlarged piece of the strip along the bound edge, as the reader sees the page. */
public record CloseUp(CloseUpWindow window, Picture picture) {}
