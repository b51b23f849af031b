/** JPEG 2000 (ISO/IEC 15444-1) decoded as far as a region of a picture asks for, as no library of a fitting licence does. */
@NullMarked
package io.bindprep.pdf.jpx;

import org.jspecify.annotations.NullMarked;
