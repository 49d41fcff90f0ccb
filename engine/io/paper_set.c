#include "paper_set.h"

#include "file_error.h"
#include "page_frame.h"
#include "tiling.h"

#include <glib/gi18n-lib.h>

#define LIST_PADDING 5.0 /* between the frame and a list */
#define LIST_WIDTH_MIN 170.0 /* on narrower paper a list is made smaller */
#define LIST_LETTERS 2.5
#define NOTE_WIDTH_MIN 60.0 /* of notes that can be read */
#define PIECE_WIDTH_MIN 190.0 /* so that the title strip of a narrow piece can be read */
#define PIECE_ROOM_MIN 122.0  /* so that the upright bar of a low one is whole, with its labels */

/* What one call of rw_paper_set_new() works with. */
typedef struct
{
  RwPaperSet            *set;
  const RwPapersOptions *options;
  const RwPaperKind     *kind;
  RwPaperJob             job;
  double                 margin, overlap;
  double                 list_scale;
  int                    sheet, sheets; /* this one of how many, counted from 1 */
} Maker;

static void
page_free (gpointer data)
{
  RwPaperPage *page = data;

  g_free (page->title);
  g_free (page->label);
  g_free (page);
}

static const RwLayout *
keep_layout (const Maker *maker, const RwSheet *sheet, double scale)
{
  RwLayout *layout = rw_layout_new (sheet, scale, 0);

  g_ptr_array_add (maker->set->layouts, layout);
  return layout;
}

/* Title strip */

const char *
rw_paper_set_title (const RwProject *project)
{
  return *project->name != '\0' ? project->name : _("Build without a name");
}

static char *
scale_words (const Maker *maker, double scale)
{
  double larger = scale >= 1 ? scale : 1 / scale;
  g_autofree char *number = rw_quantity_write (larger, "", RW_UNITS_MM, larger == (int) larger ? 0 : 1,
                                               maker->options->style.decimal);

  return scale >= 1 ? g_strdup_printf ("%s : 1", number) : g_strdup_printf ("1 : %s", number);
}

static char *
page_words (const Maker *maker, int page, int pages)
{
  if (pages > 1)
    return g_strdup_printf (_("sheet %d of %d, page %d of %d"), maker->sheet, maker->sheets, page, pages);
  return g_strdup_printf (_("sheet %d of %d"), maker->sheet, maker->sheets);
}

static char *
revision_words (const Maker *maker)
{
  const char *revision = maker->options->revision;

  return g_strdup_printf (_("revision %s"), revision != NULL && *revision != '\0' ? revision : "A");
}

static const char *
units_words (RwUnits units)
{
  if (units == RW_UNITS_MM)
    return _("all in millimetres");
  return rw_units_parts (units) > 0 ? _("all in inches (± mm)") : _("all in inches");
}

/* Templates are called after what the build has: segments, staves or plies. */
static const char *
title_of (const Maker *maker, const RwSheet *sheet)
{
  return maker->kind->fit == RW_PAPER_FULL_SIZE ? sheet->title : _(maker->kind->title);
}

/* Adds a page whose drawing stands with its origin at a place of the shape (mm, y up); frame is taken over.
 * scale is 0 for lists, which have none. */
static RwPaperPage *
add_page (const Maker       *maker,
          GPtrArray         *pages,
          const RwPageShape *shape,
          RwSheet           *frame,
          const RwPagePart  *drawing,
          int                page,
          int                count)
{
  RwPaperPage *made = g_new0 (RwPaperPage, 1);
  const char *title = title_of (maker, drawing->layout->sheet);
  double scale = maker->kind->fit == RW_PAPER_LIST ? 0 : drawing->layout->scale;
  g_autofree char *scale_text = scale > 0 ? scale_words (maker, scale) : g_strdup ("");
  g_autofree char *page_text = page_words (maker, page, count);
  g_autofree char *revision = revision_words (maker);
  const RwTitle strip = { .project = rw_paper_set_title (maker->job.project),
                          .title = title,
                          .view = *maker->kind->view != '\0' ? _(maker->kind->view) : "",
                          .units = units_words (maker->options->style.units),
                          .scale = scale_text,
                          .paper = pages == maker->set->pages ? maker->options->paper->label : "",
                          .date = maker->options->date,
                          .revision = revision,
                          .page = page_text };

  rw_frame_title (frame, shape, &strip);
  g_ptr_array_add (maker->set->sheets, frame);
  made->kind = maker->kind;
  made->title = g_strdup (title);
  made->label = page == 1 ? g_strdup (title) : g_strdup_printf (_("page %d of %d"), page, count);
  made->is_first = page == 1;
  made->width = shape->width;
  made->height = shape->height;
  made->parts[0] = (RwPagePart){ drawing->layout, { drawing->origin.x, shape->height - drawing->origin.y } };
  made->parts[1] = (RwPagePart){ keep_layout (maker, frame, 1), { 0, shape->height } };
  made->clip = (RwBox){ shape->room.x0, shape->height - shape->room.y1, shape->room.x1,
                        shape->height - shape->room.y0 };
  g_ptr_array_add (pages, made);
  return made;
}

static RwSheet *
new_frame (const Maker *maker)
{
  return rw_sheet_new (maker->kind->title, maker->options->style);
}

/* Fitted sheets */

/* ISO 5455 has 2, 5 and 10 and their tens; 1 : 2.5, 1 : 3 and 1 : 4 stand between for the sake of small
 * paper. */
static const double fitted_scales[] = {
  10, 5, 2, 1, 1 / 2.0, 1 / 2.5, 1 / 3.0, 1 / 4.0, 1 / 5.0, 1 / 10.0, 1 / 20.0,
};

static gboolean
fits (const RwLayout *layout, const RwPageShape *shape)
{
  const RwBox *extent = &layout->extent, *room = &shape->room;

  return extent->x1 - extent->x0 <= room->x1 - room->x0 && extent->y1 - extent->y0 <= room->y1 - room->y0;
}

/* So that the middle of the drawing is in the middle of the room. */
static RwPoint
centred (const RwLayout *layout, const RwPageShape *shape)
{
  const RwBox *extent = &layout->extent, *room = &shape->room;

  return (RwPoint){ (room->x0 + room->x1 - extent->x0 - extent->x1) / 2,
                    (room->y0 + room->y1 - extent->y0 - extent->y1) / 2 };
}

static void
add_fitted (const Maker *maker, RwSheet *sheet)
{
  const RwPaper *paper = maker->options->paper;
  const RwPageShape shapes[] = { rw_page_shape (paper->height_mm, paper->width_mm, maker->margin, TRUE),
                                 rw_page_shape (paper->width_mm, paper->height_mm, maker->margin, TRUE) };
  RwLayout *layout = NULL;
  const RwPageShape *shape = NULL;

  /* The last scale is taken whether it fits or not. */
  for (guint i = 0; i < G_N_ELEMENTS (fitted_scales) && shape == NULL; i++)
    {
      rw_layout_free (layout);
      layout = rw_layout_new (sheet, fitted_scales[i], 0);
      for (guint k = 0; k < G_N_ELEMENTS (shapes) && shape == NULL; k++)
        if (fits (layout, &shapes[k]) || i == G_N_ELEMENTS (fitted_scales) - 1)
          shape = &shapes[k];
    }
  g_ptr_array_add (maker->set->layouts, layout);

  RwSheet *frame = new_frame (maker);
  RwPagePart drawing = { layout, centred (layout, shape) };

  rw_frame_border (frame, shape);
  rw_frame_bars (frame, shape, layout->scale);
  add_page (maker, maker->set->pages, shape, frame, &drawing, 1, 1);
}

/* Sheets in full size */

static void
add_tiles (const Maker *maker, const RwLayout *layout)
{
  const RwPaper *paper = maker->options->paper;
  RwTiling tiling = rw_tiling_fit (layout, paper->width_mm, paper->height_mm, maker->margin, maker->overlap);
  int count = tiling.columns * tiling.rows, lost;
  RwLayout *settled = rw_tiling_settle (&tiling, layout, &lost);

  g_ptr_array_add (maker->set->layouts, settled);
  for (int page = 0; page < count; page++)
    {
      int column = page % tiling.columns, row = page / tiling.columns;
      RwSheet *frame = new_frame (maker);
      RwLayout *shown = rw_tiling_page (&tiling, settled, column, row);
      RwPoint origin = rw_tiling_origin (&tiling, column, row);
      RwBox window = rw_tiling_window (&tiling, column, row);
      RwPagePart drawing = { shown, origin };
      RwPaperPage *made;

      g_ptr_array_add (maker->set->layouts, shown);
      rw_frame_bars (frame, &tiling.shape, 1);
      rw_tiling_draw (&tiling, shown, column, row, frame);
      made = add_page (maker, maker->set->pages, &tiling.shape, frame, &drawing, page + 1, count);
      made->clip = (RwBox){ window.x0 + origin.x, made->height - window.y1 - origin.y, window.x1 + origin.x,
                            made->height - window.y0 - origin.y };
    }
}

static void
add_piece (const Maker *maker, const RwLayout *layout)
{
  const RwBox *extent = &layout->extent;
  double beside = 2 * maker->margin + RW_BAR_BAND, under = beside + RW_TITLE_STRIP, air = 4;
  double width = MAX (extent->x1 - extent->x0 + air + beside, PIECE_WIDTH_MIN + 2 * maker->margin);
  double height = MAX (extent->y1 - extent->y0 + air, PIECE_ROOM_MIN) + under;
  RwPageShape shape = rw_page_shape (width, height, maker->margin, TRUE);
  RwSheet *frame = new_frame (maker);
  RwPagePart drawing = { layout, centred (layout, &shape) };

  rw_frame_border (frame, &shape);
  rw_frame_bars (frame, &shape, 1);
  add_page (maker, maker->set->pieces, &shape, frame, &drawing, 1, 1);
}

static void
add_full_size (const Maker *maker, RwSheet *sheet)
{
  const RwLayout *layout = keep_layout (maker, sheet, 1);

  add_tiles (maker, layout);
  add_piece (maker, layout);
}

/* Lists: the builder is asked for one page after the other. */

static void
add_list (Maker *maker, RwSheet *sheet, const RwPageShape *shape)
{
  g_autoptr (GPtrArray) sheets = g_ptr_array_new ();

  for (; sheet != NULL; sheet = maker->kind->build (&maker->job))
    {
      g_ptr_array_add (sheets, sheet);
      if (maker->job.page > 0) /* the first is kept already */
        g_ptr_array_add (maker->set->sheets, sheet);
      maker->job.page++;
    }

  for (guint i = 0; i < sheets->len; i++)
    {
      RwSheet *frame = new_frame (maker);
      RwLayout *layout = rw_layout_new (g_ptr_array_index (sheets, i), maker->list_scale,
                                        LIST_LETTERS * maker->list_scale);
      RwPagePart list = { layout, { shape->room.x0 + LIST_PADDING, shape->room.y1 - LIST_PADDING } };

      g_ptr_array_add (maker->set->layouts, layout);
      rw_frame_border (frame, shape);
      add_page (maker, maker->set->pages, shape, frame, &list, (int) i + 1, (int) sheets->len);
    }
}

/* The set */

static gboolean
is_chosen (const RwPapersOptions *options, const RwPaperKind *kind)
{
  return options->only == NULL || g_strv_contains (options->only, kind->id);
}

static gboolean
check_only (const RwPapersOptions *options, GError **error)
{
  for (int i = 0; options->only != NULL && options->only[i] != NULL; i++)
    if (rw_paper_kind_find (options->only[i]) < 0)
      {
        g_autofree char *name = rw_file_quote (options->only[i]);

        g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_VALUE, _("There is no paper called %s"), name);
        return FALSE;
      }
  return TRUE;
}

static void
add_sheet (Maker *maker, RwSheet *sheet, const RwPageShape *list_shape)
{
  switch (maker->kind->fit)
    {
    case RW_PAPER_FULL_SIZE:
      add_full_size (maker, sheet);
      break;
    case RW_PAPER_FITTED:
      add_fitted (maker, sheet);
      break;
    case RW_PAPER_LIST:
      add_list (maker, sheet, list_shape);
      break;
    }
}

gboolean
rw_papers_go_on (const RwPapersOptions *options, int done, int of, GError **error)
{
  if (options->progress == NULL || options->progress (done, of, options->progress_data))
    return TRUE;
  g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_STOPPED,
               _("The papers were stopped before they were done"));
  return FALSE;
}

/* What an upright page has between two bands. */
static double
note_width (const Maker *maker)
{
  const RwPaper *paper = maker->options->paper;
  const RwPageShape shape = rw_page_shape (paper->width_mm, paper->height_mm, maker->margin, TRUE);

  return MAX (NOTE_WIDTH_MIN, shape.room.x1 - shape.room.x0 - 2 * maker->overlap);
}

/* First the first sheet of every kind, so that each title strip can say how many there are.  FALSE: stopped.
 */
static gboolean
add_sheets (Maker *maker, GError **error)
{
  const RwPaper *paper = maker->options->paper;
  const RwPageShape list_shape = rw_page_shape (paper->width_mm, paper->height_mm, maker->margin, FALSE);
  g_autofree RwSheet **sheets = g_new0 (RwSheet *, rw_paper_kinds_count);

  double width = list_shape.room.x1 - list_shape.room.x0 - 2 * LIST_PADDING;
  double height = list_shape.room.y1 - list_shape.room.y0 - 2 * LIST_PADDING;

  maker->list_scale = MIN (1, width / LIST_WIDTH_MIN);
  maker->job.width = width / maker->list_scale;
  maker->job.height = height / maker->list_scale;
  maker->job.note_width = note_width (maker);
  for (int i = 0; i < rw_paper_kinds_count; i++)
    if (is_chosen (maker->options, &rw_paper_kinds[i]))
      {
        sheets[i] = rw_paper_kinds[i].build (&maker->job);
        maker->sheets += sheets[i] != NULL;
      }

  for (int i = 0; i < rw_paper_kinds_count; i++)
    if (sheets[i] != NULL)
      g_ptr_array_add (maker->set->sheets, sheets[i]);
  for (int i = 0; i < rw_paper_kinds_count; i++)
    if (sheets[i] != NULL)
      {
        if (!rw_papers_go_on (maker->options, 0, 1, error))
          return FALSE;
        maker->kind = &rw_paper_kinds[i];
        maker->job.page = 0;
        maker->sheet++;
        add_sheet (maker, sheets[i], &list_shape);
      }
  return TRUE;
}

void
rw_paper_set_correct (RwPaperSet *set, double bar_short_mm, double bar_long_mm)
{
  set->stretch_short = bar_short_mm > 0 ? 100 / bar_short_mm : 1;
  set->stretch_long = bar_long_mm > 0 ? 100 / bar_long_mm : 1;
}

static RwPaperSet *
empty_set (const RwPapersOptions *options)
{
  RwPaperSet *set = g_new0 (RwPaperSet, 1);

  set->pages = g_ptr_array_new_with_free_func (page_free);
  set->pieces = g_ptr_array_new_with_free_func (page_free);
  set->sheets = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_sheet_free);
  set->layouts = g_ptr_array_new_with_free_func ((GDestroyNotify) rw_layout_free);
  rw_paper_set_correct (set, options->bar_short_mm, options->bar_long_mm);
  return set;
}

/* As it is drawn: for one hand or the other. */
static RwDesign
design_for (const RwProject *project, RwPapersHand hand)
{
  RwDesign design = project->design;

  if (hand != RW_PAPERS_AS_BUILT)
    design.build_handed = hand == RW_PAPERS_LEFT ? RW_HANDED_LEFT : RW_HANDED_RIGHT;
  return design;
}

RwPaperSet *
rw_paper_set_new (const RwProject *project, const RwPapersOptions *options, GError **error)
{
  if (!check_only (options, error))
    return NULL;

  g_autoptr (RwPaperSet) set = empty_set (options);
  g_autofree RwResult *result = g_new (RwResult, 1), *planned = g_new (RwResult, 1);
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);
  RwDesign design = design_for (project, options->hand);
  Maker maker = { .set = set,
                  .options = options,
                  .margin = options->margin_mm > 0 ? options->margin_mm : RW_PAPER_MARGIN,
                  .overlap = options->overlap_mm > 0 ? options->overlap_mm : RW_PAPER_OVERLAP };

  rw_project_measured (project, measured);
  rw_solve (&design, measured, result);
  rw_solve (&design, NULL, planned);
  maker.job = (RwPaperJob){ .project = project,
                            .result = result,
                            .planned = planned,
                            .measured = measured,
                            .style = options->style,
                            .date = options->date };
  if (!add_sheets (&maker, error))
    return NULL;
  if (set->pages->len == 0)
    {
      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_VALUE, _("This build has none of these papers"));
      return NULL;
    }
  return g_steal_pointer (&set);
}

void
rw_paper_set_free (RwPaperSet *set)
{
  if (set == NULL)
    return;

  g_ptr_array_unref (set->pages);
  g_ptr_array_unref (set->pieces);
  g_ptr_array_unref (set->layouts);
  g_ptr_array_unref (set->sheets);
  g_free (set);
}

void
rw_paper_set_paint (const RwPaperSet *set, const RwPaperPage *page, cairo_t *cr)
{
  const RwBox *clip = &page->clip;
  gboolean upright = page->width <= page->height; /* pages that lie across are turned by the printer */

  cairo_save (cr);
  cairo_translate (cr, page->width / 2, page->height / 2);
  cairo_scale (cr, upright ? set->stretch_short : set->stretch_long,
               upright ? set->stretch_long : set->stretch_short);
  cairo_translate (cr, -page->width / 2, -page->height / 2);
  for (guint i = 0; i < G_N_ELEMENTS (page->parts); i++)
    {
      cairo_save (cr);
      if (i == 0)
        {
          cairo_rectangle (cr, clip->x0, clip->y0, clip->x1 - clip->x0, clip->y1 - clip->y0);
          cairo_clip (cr);
        }
      cairo_translate (cr, page->parts[i].origin.x, page->parts[i].origin.y);
      rw_paint (cr, page->parts[i].layout, &rw_palette_print, 0);
      cairo_restore (cr);
    }
  cairo_restore (cr);
}

RwPage
rw_paper_page_picture (const RwPaperPage *page)
{
  return (RwPage){ page->width, page->height, page->title, page->parts, G_N_ELEMENTS (page->parts) };
}
