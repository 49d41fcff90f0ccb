#include "study_file.h"

#include <string.h>

#include "export_pdf.h"
#include "export_png.h"
#include "export_svg.h"
#include "study_formats.h"

#define MARGIN 5.0
#define HEADING_ROOM 7.0
#define DPI 200

static const char *const names[RW_STUDY_FORMAT_COUNT] = { "text", "csv", "json", "svg", "pdf", "png" };

const char *
rw_study_format_name (RwStudyFormat format)
{
  return names[format];
}

int
rw_study_format_find (const char *name)
{
  for (int format = 0; format < RW_STUDY_FORMAT_COUNT; format++)
    if (strcmp (names[format], name) == 0)
      return format;
  return -1;
}

/* ---- the picture ---- */

typedef struct
{
  RwSheet   *sheets[2]; /* plots, heading */
  RwLayout  *layouts[2];
  RwPagePart parts[2];
  RwPage     page;
} Picture;

static void
make_picture (Picture *picture, const RwStudy *study, const RwStudyLook *look)
{
  double room = look->heading != NULL ? HEADING_ROOM : 0;

  picture->sheets[0] = rw_study_draw (study, look->width - 2 * MARGIN, look->height - 2 * MARGIN - room, look->style,
                                      NULL);
  picture->sheets[1] = rw_sheet_new (study->title, look->style);
  if (look->heading != NULL)
    rw_sheet_text (picture->sheets[1], 0, 0, RW_ALIGN_START, RW_LETTERS_LARGE, look->heading);
  for (int i = 0; i < 2; i++)
    picture->layouts[i] = rw_layout_new (picture->sheets[i], 1, 0);
  picture->parts[0] = (RwPagePart){ picture->layouts[0], { MARGIN, look->height - MARGIN } };
  picture->parts[1] = (RwPagePart){ picture->layouts[1], { MARGIN + 2, MARGIN + rw_letters_size (RW_LETTERS_LARGE) } };
  picture->page = (RwPage){ look->width, look->height, study->title, picture->parts, look->heading != NULL ? 2 : 1 };
}

static void
clear_picture (Picture *picture)
{
  for (int i = 0; i < 2; i++)
    {
      rw_layout_free (picture->layouts[i]);
      rw_sheet_free (picture->sheets[i]);
    }
}

static void
paint (const Picture *picture, cairo_t *cr)
{
  for (int i = 0; i < picture->page.count; i++)
    {
      cairo_save (cr);
      cairo_translate (cr, picture->parts[i].origin.x, picture->parts[i].origin.y);
      rw_paint (cr, picture->parts[i].layout, &rw_palette_print, 0);
      cairo_restore (cr);
    }
}

void
rw_study_paint (const RwStudy *study, const RwStudyLook *look, cairo_t *cr)
{
  Picture picture;

  make_picture (&picture, study, look);
  paint (&picture, cr);
  clear_picture (&picture);
}

static GBytes *
pdf_bytes (const Picture *picture, const RwStudyLook *look, GError **error)
{
  g_autoptr (RwPdf) pdf = rw_pdf_new (picture->page.title, look->date);

  paint (picture, rw_pdf_begin_page (pdf, look->width, look->height, picture->page.title, FALSE));
  return rw_pdf_finish (pdf, error);
}

static GBytes *
picture_bytes (const RwStudy *study, RwStudyFormat format, const RwStudyLook *look, GError **error)
{
  GBytes *bytes = NULL;
  Picture picture;

  make_picture (&picture, study, look);
  if (format == RW_STUDY_PDF)
    bytes = pdf_bytes (&picture, look, error);
  else if (format == RW_STUDY_PNG)
    bytes = rw_png_write (&picture.page, &rw_palette_print, DPI, error);
  else
    {
      char *text = rw_svg_write (&picture.page, &rw_palette_print);

      bytes = g_bytes_new_take (text, strlen (text));
    }
  clear_picture (&picture);
  return bytes;
}

GBytes *
rw_study_write (const RwStudy *study, RwStudyFormat format, const RwStudyLook *look, GError **error)
{
  char *text;

  if (format >= RW_STUDY_SVG)
    return picture_bytes (study, format, look, error);
  text = format == RW_STUDY_CSV    ? rw_study_csv (study, look->style.units)
         : format == RW_STUDY_JSON ? rw_study_json (study)
                                   : rw_study_text (study, look->style);
  return g_bytes_new_take (text, strlen (text));
}
