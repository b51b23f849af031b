/** Answers: which objects, pages, boxes, bookmarks and layers does the file have? ISO 32000-1:2008, 7.5, 7.7, 8.11, 12.3, 14.11.2. */
@NullMarked
package io.bindprep.pdf.document;

import org.jspecify.annotations.NullMarked;
