/** Every address that the application answers at, held to who may do what there. */
package org.holewise.route;
