package io.bindprep.picture;

/** One page before a repair and after it. */
public record PicturePair(PagePicture before, PagePicture after) {}
