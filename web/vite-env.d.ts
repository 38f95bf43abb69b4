/** Styles are taken in by the build; a module sees nothing of them. */
declare module '*.css';
