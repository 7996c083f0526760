/** What outlives the end of the process. */
package org.holewise.crash;
