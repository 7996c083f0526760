/** For tests: a school that runs as it does for people, and a visitor to it. */
package org.holewise.running;
