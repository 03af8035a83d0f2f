/** Sand in laminar flow, settled beds and plugs. */
package sandslurry.transport.bed;
