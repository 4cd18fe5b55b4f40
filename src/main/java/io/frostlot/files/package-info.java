/**
 * Files in and out: reads a scenario folder and supplier profiles, described by the Table Schemas
 * and JSON Schemas shipped in the jar, into the records of the rooms below, and collects every
 * problem found on the way. The only room that knows CSV and JSON; it knows nothing of programs,
 * reports or commands, and does no arithmetic about the world beyond turning what was typed into
 * units.
 */
@NullMarked
package io.frostlot.files;

import org.jspecify.annotations.NullMarked;
