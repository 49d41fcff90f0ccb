/* The shelf in files of its own: the personal shelf, and tables for other programs. */
#pragma once

#include "file_error.h"
#include "project/shelf.h"
#include "table/param.h"

/* ---- the personal shelf, shared between projects ---- */

/* "rimwright/shelf.json" in the user's folder for data.  New. */
char    *rw_shelf_path      (void);
char    *rw_shelf_to_text   (const RwShelf *shelf);
RwShelf *rw_shelf_from_text (const char *text, gsize length, GError **error);
/* An empty shelf where there is no file yet. */
RwShelf *rw_shelf_load      (const char *path, GError **error);
gboolean rw_shelf_save      (const RwShelf *shelf, const char *path, GError **error);

/* ---- comma-separated values ---- */

#define RW_SHELF_CSV_MAX_BYTES (1024 * 1024)

/* rw_shelf_from_csv: reads a table as RFC 4180 has it.
 *
 * The first row names the columns: name, kind, material, length, width, thickness, count, avoid, price, mass, in any
 * order; material, length and width are needed, others are not.  A row without a kind is a board where its material is
 * a wood.  Lengths carry their unit, or are in that of units; decimals have a point.  Also read are semicolons or tabs
 * in the place of commas, where the first row has them; then a decimal comma too.
 *
 * Returned  the shelf, which has all good rows; or NULL with an error where there is no table at all.
 *           faults (may be NULL) takes one sentence for each bad row: row, column, value and what is wanted.
 */
RwShelf *rw_shelf_from_csv (const char *text, gsize length, RwUnits units, GPtrArray *faults, GError **error);
/* The same from a file, of which no more is read than a shelf can have. */
RwShelf *rw_shelf_load_csv (const char *path, RwUnits units, GPtrArray *faults, GError **error);
char    *rw_shelf_to_csv   (const RwShelf *shelf);
