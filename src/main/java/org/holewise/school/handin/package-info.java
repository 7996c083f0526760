/** What a bench enters, asks and hands in: drafts, the gate before power, hand-ins, their marks. */
@NullMarked
package org.holewise.school.handin;

import org.jspecify.annotations.NullMarked;
