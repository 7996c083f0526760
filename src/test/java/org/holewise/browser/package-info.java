/** For tests: pages as people see them, in a real browser. */
package org.holewise.browser;
