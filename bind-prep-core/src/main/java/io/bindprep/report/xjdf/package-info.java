/** Answers: how does another system of the shop learn how the book is punched and bound? By an XJDF 2.2 ticket (CIP4). */
@NullMarked
package io.bindprep.report.xjdf;

import org.jspecify.annotations.NullMarked;
