/** How fast one grain falls, and how fast a crowd of them. */
package sandslurry.settling;
