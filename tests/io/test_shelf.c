/* The shelf: in project files, in a file of its own, and as a table. */
#include <glib/gstdio.h>
#include <string.h>

#include "io/project_file.h"
#include "io/shelf_file.h"
#include "project/stock_field.h"

#define STYLE RW_STYLE_FILE

static RwStockItem *
item_of (const char *kind, const char *material, const char *length, const char *width, const char *thickness)
{
  RwStockItem *item = rw_stock_item_new (RW_STOCK_BOARD);
  g_autoptr (GError) error = NULL;

  g_assert_true (rw_stock_field_read (item, RW_STOCK_KIND, kind, STYLE, &error));
  g_assert_true (rw_stock_field_read (item, RW_STOCK_MATERIAL, material, STYLE, &error));
  g_assert_true (rw_stock_field_read (item, RW_STOCK_LENGTH, length, STYLE, &error));
  g_assert_true (rw_stock_field_read (item, RW_STOCK_WIDTH, width, STYLE, &error));
  g_assert_true (rw_stock_field_read (item, RW_STOCK_THICKNESS, thickness, STYLE, &error));
  g_assert_true (rw_stock_item_check (item, &error));
  return item;
}

static RwShelf *
some_shelf (void)
{
  RwShelf *shelf = rw_shelf_new ();
  RwStockItem *board = item_of ("board", "Black cherry", "36 in", "4 1/2 in", "27.5 mm");

  g_assert_true (rw_stock_field_read (board, RW_STOCK_NAME, "Board, with \"marks\" – ü", STYLE, NULL));
  g_assert_true (rw_stock_field_read (board, RW_STOCK_AVOID, "0..40; 32 in..33in", STYLE, NULL));
  g_assert_true (rw_stock_field_read (board, RW_STOCK_PRICE, "12.5", STYLE, NULL));
  g_assert_true (rw_stock_field_read (board, RW_STOCK_MASS, "2 lb", STYLE, NULL));
  g_ptr_array_add (shelf->items, board);
  g_ptr_array_add (shelf->items, item_of ("rod", "brass_cutting_half_hard", "1000", "4.17", ""));
  g_ptr_array_add (shelf->items, item_of ("tube", "steel_mild", "300", "3", "0.45"));
  return shelf;
}

static void
test_units (void)
{
  g_autoptr (RwShelf) shelf = some_shelf ();
  const RwStockItem *board = g_ptr_array_index (shelf->items, 0);

  /* An inch is 25.4 mm, a pound 453.59237 g: both exactly. */
  g_assert_cmpfloat_with_epsilon (board->length, 914.4, 1e-9);
  g_assert_cmpfloat_with_epsilon (board->width, 114.3, 1e-9);
  g_assert_cmpfloat_with_epsilon (board->mass_g, 2 * 453.59237, 1e-9);
  g_assert_cmpfloat_with_epsilon (g_array_index (board->avoid, RwStretch, 1).to, 838.2, 1e-9);
  g_assert_cmpstr (board->material, ==, "cherry_black");
}

/* A ring of 3 mm outside and 0.45 mm wall, 300 mm long, of 7850 kg/m3. */
static void
test_mass (void)
{
  g_autoptr (RwShelf) shelf = some_shelf ();
  double tube = rw_stock_item_mass (g_ptr_array_index (shelf->items, 2));

  g_assert_cmpfloat (ABS (tube - G_PI * (1.5 * 1.5 - 1.05 * 1.05) * 300 * 7850e-6), <, 1e-9);
  g_assert_cmpfloat_with_epsilon (rw_stock_item_mass (g_ptr_array_index (shelf->items, 0)), 2 * 453.59237, 1e-9);
}

static void
test_project (void)
{
  g_autoptr (RwProject) project = rw_project_new (), again = NULL, plain = rw_project_new ();
  g_autoptr (RwShelf) shelf = some_shelf ();
  g_autoptr (GError) error = NULL;
  g_autofree char *text = NULL, *second = NULL, *without = rw_project_to_text (plain);

  g_assert_null (strstr (without, "\"shelf\""));
  rw_shelf_free (project->shelf);
  project->shelf = g_steal_pointer (&shelf);
  g_assert_false (rw_project_equal (project, plain));
  text = rw_project_to_text (project);
  again = rw_project_from_text (text, (gssize) strlen (text), &error);
  g_assert_no_error (error);
  g_assert_true (rw_project_equal (project, again));
  second = rw_project_to_text (again);
  g_assert_cmpstr (text, ==, second);
}

/* What a later version writes of an item stays with it. */
static void
test_stranger (void)
{
  const char *text = "{ \"rimwright\": 1, \"shelf\": [ { \"material\": \"beech\", \"length\": 900, \"width\": 100, "
                     "\"thickness\": 25, \"colour\": \"red\" } ] }";
  g_autoptr (GError) error = NULL;
  g_autoptr (RwProject) project = rw_project_from_text (text, (gssize) strlen (text), &error);

  g_assert_no_error (error);
  g_autofree char *written = rw_project_to_text (project);
  g_assert_nonnull (strstr (written, "\"colour\": \"red\" }"));
}

static void
test_personal (void)
{
  g_autoptr (RwShelf) shelf = some_shelf (), none = NULL, again = NULL;
  g_autoptr (GError) error = NULL;
  g_autofree char *folder = g_dir_make_tmp ("rimwright-XXXXXX", NULL);
  g_autofree char *inner = g_build_filename (folder, "new", NULL), *path = g_build_filename (inner, "shelf.json", NULL);

  none = rw_shelf_load (path, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (none->items->len, ==, 0);
  g_assert_true (rw_shelf_save (shelf, path, &error));
  again = rw_shelf_load (path, &error);
  g_assert_no_error (error);
  g_assert_true (rw_shelf_equal (shelf, again));
  g_unlink (path);
  g_rmdir (inner);
  g_rmdir (folder);
}

static void
test_csv (void)
{
  g_autoptr (RwShelf) shelf = some_shelf (), again = NULL;
  g_autoptr (GPtrArray) faults = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GError) error = NULL;
  g_autofree char *csv = rw_shelf_to_csv (shelf);

  again = rw_shelf_from_csv (csv, strlen (csv), RW_UNITS_MM, faults, &error);
  g_assert_no_error (error);
  g_assert_cmpuint (faults->len, ==, 0);
  g_assert_true (rw_shelf_equal (shelf, again));
}

/* Columns in any order, any unit, no kind; a spreadsheet's semicolons and decimal commas. */
static void
test_csv_foreign (void)
{
  const char *text = "\xef\xbb\xbfWidth;Thickness;Length;Material\n4,5;1 in;36;Black cherry\n\n10;3 mm;40;steel_mild\n";
  g_autoptr (GPtrArray) faults = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GError) error = NULL;
  g_autoptr (RwShelf) shelf = rw_shelf_from_csv (text, strlen (text), RW_UNITS_INCH, faults, &error);

  g_assert_no_error (error);
  g_assert_cmpuint (faults->len, ==, 0);
  g_assert_cmpuint (shelf->items->len, ==, 2);
  const RwStockItem *board = g_ptr_array_index (shelf->items, 0), *bar = g_ptr_array_index (shelf->items, 1);
  g_assert_cmpfloat_with_epsilon (board->width, 114.3, 1e-9);
  g_assert_cmpint (board->count, ==, 1);
  g_assert_cmpint (board->kind, ==, RW_STOCK_BOARD);
  g_assert_cmpint (bar->kind, ==, RW_STOCK_BAR);
}

/* A row that is bad, and what its message must name. */
static const struct
{
  const char *row;
  const char *says[3];
} bad_rows[] = {
  { "x,board,beech,long,100,20,1,,,", { "Line 3", "Length", "long" } },
  { "x,board,beech,0.5,100,20,1,,,", { "Line 3", "Length", "0.5" } },
  { "x,plank,beech,900,100,20,1,,,", { "Line 3", "Kind", "plank" } },
  { "x,board,unobtainium,900,100,20,1,,,", { "Line 3", "Material", "unobtainium" } },
  { "x,board,beech,900,100,20,two,,,", { "Line 3", "Count", "two" } },
  { "x,board,beech,900,100,20,-1,,,", { "Line 3", "Count", "-1" } },
  { "x,board,beech,900,100,20,1,40,,", { "Line 3", "To avoid", "40" } },
  { "x,board,beech,900,100,20,1,40..10,,", { "Line 3", "To avoid", "10" } },
  { "x,board,beech,900,100,,1,,,", { "Line 3", "Thickness", "Board" } },
  { "x,tube,steel_mild,900,4,2,1,,,", { "Line 3", "Thickness", "wall" } },
  { "x,board,beech,900,100,20,1,,,,,", { "Line 3", "12 fields", "quotation" } },
  { "\"x,board,beech", { "Line 3", "quotation", "closed" } },
  { "x,board,beech,900,100,20,1,,nan,", { "Line 3", "Price", "nan" } },
};

static void
test_csv_bad (void)
{
  for (gsize i = 0; i < G_N_ELEMENTS (bad_rows); i++)
    {
      g_autofree char *text = g_strdup_printf ("name,kind,material,length,width,thickness,count,avoid,price,mass\n"
                                               "good,board,beech,900,100,20,1,,,\n%s\n", bad_rows[i].row);
      g_autoptr (GPtrArray) faults = g_ptr_array_new_with_free_func (g_free);
      g_autoptr (GError) error = NULL;
      g_autoptr (RwShelf) shelf = rw_shelf_from_csv (text, strlen (text), RW_UNITS_MM, faults, &error);

      g_assert_no_error (error);
      g_assert_cmpuint (shelf->items->len, ==, 1);
      g_assert_cmpuint (faults->len, ==, 1);
      for (int k = 0; k < 3; k++)
        if (strstr (g_ptr_array_index (faults, 0), bad_rows[i].says[k]) == NULL)
          g_error ("\"%s\" does not say \"%s\"", (char *) g_ptr_array_index (faults, 0), bad_rows[i].says[k]);
    }
}

static void
test_csv_no_table (void)
{
  static const char *const texts[] = { "", "\n\n", "length,width\n1,2\n", "length,width,material,colour\n",
                                       "length,length,width,material\n", "material,length,width\n\xff,1,1\n" };

  for (gsize i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_null (rw_shelf_from_csv (texts[i], strlen (texts[i]), RW_UNITS_MM, NULL, &error));
      g_assert_nonnull (error);
    }
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/shelf/units", test_units);
  g_test_add_func ("/shelf/mass", test_mass);
  g_test_add_func ("/shelf/project", test_project);
  g_test_add_func ("/shelf/project/stranger", test_stranger);
  g_test_add_func ("/shelf/personal", test_personal);
  g_test_add_func ("/shelf/csv", test_csv);
  g_test_add_func ("/shelf/csv/foreign", test_csv_foreign);
  g_test_add_func ("/shelf/csv/bad", test_csv_bad);
  g_test_add_func ("/shelf/csv/no-table", test_csv_no_table);
  return g_test_run ();
}
