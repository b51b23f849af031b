/**
 * Answers: what is there to bind with? Hole patterns (CIP4 XJDF 2.2 Appendix F, RFC 3806), elements and punches, ours and the
 * shop's own.
 */
@NullMarked
package io.bindprep.catalogue;

import org.jspecify.annotations.NullMarked;
