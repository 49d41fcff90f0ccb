#include "papers.h"

#include "export_pdf.h"
#include "export_png.h"
#include "export_svg.h"
#include "save.h"

#include <errno.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>

static gboolean
save (const char *path, GBytes *bytes, GError **error)
{
  gsize length;
  const char *data = g_bytes_get_data (bytes, &length);

  return rw_save_bytes (path, data, length, error);
}

gboolean
rw_papers_write_pdf (const RwPaperSet *set,
                     const char       *title,
                     const char       *date,
                     const char       *path,
                     GError          **error)
{
  g_autoptr (RwPdf) pdf = rw_pdf_new (title, date);
  g_autoptr (GBytes) bytes = NULL;

  for (guint i = 0; i < set->pages->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (set->pages, i);
      cairo_t *cr = rw_pdf_begin_page (pdf, page->width, page->height, page->label, page->is_first);

      rw_paper_set_paint (set, page, cr);
    }
  bytes = rw_pdf_finish (pdf, error);
  return bytes != NULL && save (path, bytes, error);
}

/* Takes the path over. */
static void
list (GPtrArray *files, char **path)
{
  if (files != NULL)
    g_ptr_array_add (files, g_steal_pointer (path));
}

static gboolean
write_document (const RwProject       *project,
                const RwPaperSet      *set,
                const RwPapersOptions *options,
                const char            *folder,
                GPtrArray             *files,
                GError               **error)
{
  g_autofree char *path = g_build_filename (folder, "papers.pdf", NULL);

  if (!rw_papers_write_pdf (set, rw_paper_set_title (project), options->date, path, error))
    return FALSE;
  list (files, &path);
  return TRUE;
}

static gboolean
save_picture (const char *folder, const char *name, GBytes *bytes, GPtrArray *files, GError **error)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);

  if (!save (path, bytes, error))
    return FALSE;
  list (files, &path);
  return TRUE;
}

static gboolean
write_picture (const RwPaperPage     *page,
               const char            *stem,
               const RwPapersOptions *options,
               const char            *folder,
               GPtrArray             *files,
               GError               **error)
{
  RwPage picture = rw_paper_page_picture (page);

  if (options->svg)
    {
      g_autofree char *name = g_strconcat (stem, ".svg", NULL);
      char *text = rw_svg_write (&picture, &rw_palette_print);
      g_autoptr (GBytes) bytes = g_bytes_new_take (text, strlen (text));

      if (!save_picture (folder, name, bytes, files, error))
        return FALSE;
    }
  if (options->png)
    {
      g_autofree char *name = g_strconcat (stem, ".png", NULL);
      g_autoptr (GBytes) bytes = rw_png_write (&picture, &rw_palette_print, RW_PAPERS_DPI, error);

      if (bytes == NULL || !save_picture (folder, name, bytes, files, error))
        return FALSE;
    }
  return TRUE;
}

/* Sheets in full size in one piece, all others page by page. */
static gboolean
write_pictures (const RwPaperSet      *set,
                const RwPapersOptions *options,
                const char            *folder,
                GPtrArray             *files,
                GError               **error)
{
  int number = 0;

  for (guint i = 0; i < set->pieces->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (set->pieces, i);

      if (!write_picture (page, page->kind->id, options, folder, files, error))
        return FALSE;
    }
  for (guint i = 0; i < set->pages->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (set->pages, i);

      if (page->kind->fit == RW_PAPER_FULL_SIZE)
        continue;
      number = page->is_first ? 1 : number + 1;

      g_autofree char *stem = number == 1 ? g_strdup (page->kind->id)
                                          : g_strdup_printf ("%s-%d", page->kind->id, number);
      if (!write_picture (page, stem, options, folder, files, error))
        return FALSE;
    }
  return TRUE;
}

gboolean
rw_papers_write (const RwProject       *project,
                 const RwPapersOptions *options,
                 const char            *folder,
                 GPtrArray             *files,
                 GError               **error)
{
  g_autoptr (RwPaperSet) set = rw_paper_set_new (project, options, error);

  if (set == NULL)
    return FALSE;
  if (g_mkdir_with_parents (folder, 0755) != 0)
    {
      int number = errno;
      g_autofree char *name = rw_file_quote (folder);

      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("The folder %s can't be made: %s"), name,
                   g_strerror (number));
      return FALSE;
    }
  return write_document (project, set, options, folder, files, error)
         && write_pictures (set, options, folder, files, error);
}
