/** Who may come in: people with their roles, signing in, and the tokens that programs use. */
@NullMarked
package org.holewise.school.account;

import org.jspecify.annotations.NullMarked;
