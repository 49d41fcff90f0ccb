/* Papers: sheets for the bench as PDF, SVG and PNG. */
#pragma once

#include "paper_set.h"

/* rw_papers_write: writes the papers of a project into a folder that exists or can be made.
 *
 * The PDF has all sheets, and is called papers.pdf.  SVG and PNG have one file for each sheet, called after
 * its id and in one piece even where the PDF has it on several pages; lists of several pages have
 * "steps-2.svg" and so on.  CSV and JSON are the list of dimensions.  files (of char *, may be NULL) is told
 * each path written.  Errors are in RW_FILE_ERROR; a file that could not be written whole is not there, or is
 * as it was.
 */
gboolean rw_papers_write (const RwProject       *project,
                          const RwPapersOptions *options,
                          const char            *folder,
                          GPtrArray             *files,
                          GError               **error);

/* All sheets that the options ask for bound into one PDF at a path, whatever formats they ask for; pages is
 * how many it has. */
gboolean rw_papers_write_pdf (const RwProject       *project,
                              const RwPapersOptions *options,
                              const char            *path,
                              int                   *pages,
                              GError               **error);
