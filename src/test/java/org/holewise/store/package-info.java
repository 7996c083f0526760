/** For tests: empty databases of both kinds, and a clock moved by hand. */
package org.holewise.store;
