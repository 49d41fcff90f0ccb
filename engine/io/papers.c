#include "papers.h"

#include "export_pdf.h"
#include "export_png.h"
#include "export_svg.h"
#include "list_file.h"
#include "save.h"

#include <errno.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>

/* What one call works with, and how far it is. */
typedef struct
{
  const RwProject       *project;
  const RwPapersOptions *options;
  const RwPaperSet      *set;
  const char            *folder;
  GPtrArray             *files; /* may be NULL */
  int                    done, of;
} Writer;

/* About how long a page takes in each format, against a page of the PDF. */
#define SVG_EFFORT 1
#define PNG_EFFORT 8

static gboolean
go_on (Writer *writer, int effort, GError **error)
{
  writer->done += effort;
  return rw_papers_go_on (writer->options, writer->done, writer->of, error);
}

static gboolean
save (const char *path, GBytes *bytes, GError **error)
{
  gsize length;
  const char *data = g_bytes_get_data (bytes, &length);

  return rw_save_bytes (path, data, length, error);
}

/* The PDF */

static gboolean
write_pdf (Writer *writer, const char *path, GError **error)
{
  const RwPaperSet *set = writer->set;
  g_autoptr (RwPdf) pdf = rw_pdf_new (rw_paper_set_title (writer->project), writer->options->date);
  g_autoptr (GBytes) bytes = NULL;

  for (guint i = 0; i < set->pages->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (set->pages, i);
      cairo_t *cr = rw_pdf_begin_page (pdf, page->width, page->height, page->label, page->is_first);

      rw_paper_set_paint (set, page, cr);
      if (!go_on (writer, 1, error))
        return FALSE;
    }
  bytes = rw_pdf_finish (pdf, error);
  return bytes != NULL && save (path, bytes, error);
}

/* Files in the folder */

/* Takes the path over. */
static void
list (Writer *writer, char **path)
{
  if (writer->files != NULL)
    g_ptr_array_add (writer->files, g_steal_pointer (path));
}

static gboolean
write_document (Writer *writer, GError **error)
{
  g_autofree char *path = g_build_filename (writer->folder, "papers.pdf", NULL);

  if (!write_pdf (writer, path, error))
    return FALSE;
  list (writer, &path);
  return TRUE;
}

static gboolean
save_named (Writer *writer, const char *name, GBytes *bytes, GError **error)
{
  g_autofree char *path = g_build_filename (writer->folder, name, NULL);

  if (!save (path, bytes, error))
    return FALSE;
  list (writer, &path);
  return TRUE;
}

static gboolean
write_picture (Writer *writer, const RwPaperPage *page, const char *stem, GError **error)
{
  const RwPapersOptions *options = writer->options;
  RwPage picture = rw_paper_page_picture (page);

  if (options->svg)
    {
      g_autofree char *name = g_strconcat (stem, ".svg", NULL);
      char *text = rw_svg_write (&picture, &rw_palette_print);
      g_autoptr (GBytes) bytes = g_bytes_new_take (text, strlen (text));

      if (!save_named (writer, name, bytes, error) || !go_on (writer, SVG_EFFORT, error))
        return FALSE;
    }
  if (options->png)
    {
      double dpi = options->dpi > 0 ? options->dpi : RW_PAPERS_DPI;
      g_autofree char *name = g_strconcat (stem, ".png", NULL);
      g_autoptr (GBytes) bytes = rw_png_write (&picture, &rw_palette_print, dpi, error);

      if (bytes == NULL || !save_named (writer, name, bytes, error) || !go_on (writer, PNG_EFFORT, error))
        return FALSE;
    }
  return TRUE;
}

/* Sheets in full size are pictured in one piece, all others page by page. */
static gboolean
is_pictured (const RwPaperPage *page)
{
  return page->kind->fit != RW_PAPER_FULL_SIZE;
}

static gboolean
write_pictures (Writer *writer, GError **error)
{
  int number = 0;

  for (guint i = 0; i < writer->set->pieces->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (writer->set->pieces, i);

      if (!write_picture (writer, page, page->kind->id, error))
        return FALSE;
    }
  for (guint i = 0; i < writer->set->pages->len; i++)
    {
      const RwPaperPage *page = g_ptr_array_index (writer->set->pages, i);

      if (!is_pictured (page))
        continue;
      number = page->is_first ? 1 : number + 1;

      g_autofree char *stem = number == 1 ? g_strdup (page->kind->id)
                                          : g_strdup_printf ("%s-%d", page->kind->id, number);
      if (!write_picture (writer, page, stem, error))
        return FALSE;
    }
  return TRUE;
}

/* Lists */

static gboolean
write_list (Writer *writer, const RwAnswer *answer, RwListFormat format, const char *name, GError **error)
{
  char *text = rw_list_write (writer->project, answer, format, writer->options->style.units);
  g_autoptr (GBytes) bytes = g_bytes_new_take (text, strlen (text));

  return save_named (writer, name, bytes, error);
}

static gboolean
write_lists (Writer *writer, GError **error)
{
  const RwPapersOptions *options = writer->options;
  g_autoptr (RwAnswer) answer = options->csv || options->json ? rw_answer_new (writer->project) : NULL;

  return (!options->csv || write_list (writer, answer, RW_LIST_CSV, "dimensions.csv", error))
         && (!options->json || write_list (writer, answer, RW_LIST_JSON, "dimensions.json", error));
}

/* The whole */

static int
effort_of (const RwPaperSet *set, const RwPapersOptions *options)
{
  int pages = (int) set->pages->len, pictures = (int) set->pieces->len;

  for (guint i = 0; i < set->pages->len; i++)
    pictures += is_pictured (g_ptr_array_index (set->pages, i));
  return (options->pdf ? pages : 0)
         + pictures * ((options->svg ? SVG_EFFORT : 0) + (options->png ? PNG_EFFORT : 0));
}

/* Makes the folder where there is none; *made tells. */
static gboolean
make_folder (const char *folder, gboolean *made, GError **error)
{
  *made = !g_file_test (folder, G_FILE_TEST_EXISTS);
  if (g_mkdir_with_parents (folder, 0755) != 0)
    {
      int number = errno;
      g_autofree char *name = rw_file_quote (folder);

      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("The folder %s can't be made: %s"), name,
                   g_strerror (number));
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
  Writer writer = { project, options, set, folder, files, 0, 0 };
  gboolean made, good;

  if (set == NULL || !make_folder (folder, &made, error))
    return FALSE;
  writer.of = effort_of (set, options);
  good = (!options->pdf || write_document (&writer, error)) && write_pictures (&writer, error)
         && write_lists (&writer, error);
  if (!good && made)
    g_rmdir (folder); /* which only does so where nothing was written */
  return good;
}

gboolean
rw_papers_write_pdf (const RwProject       *project,
                     const RwPapersOptions *options,
                     const char            *path,
                     int                   *pages,
                     GError               **error)
{
  g_autoptr (RwPaperSet) set = rw_paper_set_new (project, options, error);
  Writer writer = { project, options, set, NULL, NULL, 0, 0 };

  if (set == NULL)
    return FALSE;
  *pages = writer.of = (int) set->pages->len;
  return write_pdf (&writer, path, error);
}
