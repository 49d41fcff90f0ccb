/* Papers: sheets for the bench as PDF, SVG and PNG. */
#pragma once

#include "paper_set.h"

/* How finely PNG pictures are painted. */
#define RW_PAPERS_DPI 200

/* rw_papers_write: writes the papers of a project into a folder that exists or can be made.
 *
 * All sheets are bound into papers.pdf.  SVG and PNG have one file for each sheet, called after its id and in
 * one piece even where the PDF has it on several pages; lists of several pages have "steps-2.svg" and so on.
 * files (of char *, may be NULL) is told each path written.  Errors are in RW_FILE_ERROR; a file that could
 * not be written whole is not there, or is as it was.
 */
gboolean rw_papers_write (const RwProject       *project,
                          const RwPapersOptions *options,
                          const char            *folder,
                          GPtrArray             *files,
                          GError               **error);

/* All pages of a set bound into one PDF at a path; date as in the options that the set was made with. */
gboolean rw_papers_write_pdf (const RwPaperSet *set,
                              const char       *title,
                              const char       *date,
                              const char       *path,
                              GError          **error);
