mergeInto(LibraryManager.library, {
  $SlabsideHiding: {watches: false, was_hidden: false},

  // Whether the page is hidden, or was since this was last asked.
  slabside_was_hidden__deps: ['$SlabsideHiding'],
  slabside_was_hidden: function () {
    const hiding = SlabsideHiding;
    if (!hiding.watches) {
      hiding.watches = true;
      document.addEventListener('visibilitychange', () => { hiding.was_hidden = true; });
    }
    const was = hiding.was_hidden || document.hidden;
    hiding.was_hidden = false;
    return was ? 1 : 0;
  },
});
