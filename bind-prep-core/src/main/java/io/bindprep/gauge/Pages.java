package io.bindprep.gauge;

import java.io.IOException;

/** The pages of a document that is being painted, one after the other. */
interface Pages {
    /** A new page. */
    Column next() throws IOException;

    /** Lowest place on a page that may be filled, millimetres. */
    double foot();
}
